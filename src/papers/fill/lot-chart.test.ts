import { describe, expect, it } from 'vitest';
import { bookUnits } from '../../book/book-units.ts';
import { makePaperWords } from '../paper-words.ts';
import { lotChart } from './lot-chart.ts';

const book = { twinfloor: 1 } as const;
const paper = makePaperWords(book, bookUnits(book, 'metric'), 'en');

const chartOf = (bottles: readonly (readonly [lane: string, gross: string])[]) =>
  lotChart(
    {
      given: {
        floor: 'F',
        format: 'B',
        packages: bottles.map(([lane, gross]) => ({ lane, gross, tare: '1 kg' })),
      },
      problems: [],
    },
    paper,
  );

describe('the chart of a lot that no rule judged', () => {
  it('has every bottle where its contents lie on the axis that is written under it', () => {
    const chart = chartOf([
      ['-Y11', '3.02 kg'],
      ['-Y12', '3.00 kg'],
      ['-Y11', '3.06 kg'],
      ['-Y11', '3.02 kg'],
    ])!;
    const [first, ...others] = chart.ticks;
    const last = others.at(-1)!;
    const kilograms = (at: number): number =>
      Number(first!.text) +
      ((Number(last.text) - Number(first!.text)) * (at - first!.at)) / (last.at - first!.at);
    expect(chart.lanes.map(({ lane }) => lane)).toEqual(['-Y11', '-Y12']);
    const read = chart.lanes.flatMap(({ bottles }) => bottles.map(({ at }) => kilograms(at)));
    // a dot is as wide as 1.4 % of the axis, here a gram: each lies within half of one
    for (const [i, net] of [2.02, 2.06, 2.02, 2].entries())
      expect(Math.abs(read[i]! - net)).toBeLessThan(5e-4);
    // what would lie on another stands on it
    expect(chart.lanes[0]?.bottles.map(({ above }) => above)).toEqual([0, 0, 1]);
    expect(chart.alt).toContain('4 bottles');
  });

  it('is left out where nothing can be drawn', () => {
    expect(chartOf([])).toBeUndefined();
    expect(
      chartOf([
        ['-Y11', 'much'],
        ['-Y12', '3 kg'],
      ]),
    ).toBeUndefined();
  });

  it('of bottles that are all alike has them on one place', () => {
    const chart = chartOf([
      ['', '3 kg'],
      ['', '3 kg'],
    ])!;
    expect(chart.lanes[0]?.bottles.map(({ at, above }) => [Number.isFinite(at), above])).toEqual([
      [true, 0],
      [true, 1],
    ]);
  });
});
