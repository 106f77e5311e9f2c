import { describe, expect, it } from 'vitest';
import sheet from '../../../examples/fill/trials.csv?raw';
import { meanOf } from '../../line/shift/sampled.ts';
import type { WeighedTrial } from '../fill/weighed.ts';
import { bindShift } from './bind-shift.ts';
import { demoBook, larkmoor, oxbow } from './testing/demo-shift.ts';

/** The trials of the demonstration, four bottles of each of four lanes at two counts, all lanes running. */
const trials = (more: Partial<WeighedTrial> = {}): readonly WeighedTrial[] =>
  sheet
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [floor = '', row = '', lane = '', preset, time, gross, tare] = line.split(',');
      return {
        floor,
        row: `${floor} ${row}`,
        lane,
        preset: Number(preset),
        lanesOpen: 4,
        time: `${time} s`,
        gross: `${gross} kg`,
        tare: `${tare} kg`,
        temperature: '12 degC',
        resolution: '1 g',
        ...more,
      };
    });
const bound = (floor: number, more?: Partial<WeighedTrial>) =>
  bindShift(demoBook, floor, undefined, { trials: trials(more) });

describe('trials made on a floor', () => {
  it('give the shift there the fill that the watch read, with an interval narrower than by the book', () => {
    const byBook = bindShift(demoBook, oxbow);
    const { fillFrom, fillEnds, line, runningRate, period } = bound(oxbow);
    expect(fillFrom).toMatchObject({ from: 'OXBOW', trials: 32 });
    // lane -Y14 was timed with 14.72, 14.74, 14.58 and 14.66 s for 783 counts: by proportion 14.97 s for the 799 of the book
    const timed = (14.72 + 14.74 + 14.58 + 14.66) / 4;
    expect(Math.abs(fillFrom!.set.seconds - (timed * 799) / 783)).toBeLessThan(0.1);
    expect(fillEnds![1] - fillEnds![0]).toBeLessThan(0.5 * (byBook.fillEnds![1] - byBook.fillEnds![0]));
    const { fill } = line!;
    const set = fill!.lag + meanOf(fill!.filling) + (fill!.supply?.seconds[0] ?? 0);
    expect(Math.abs(set - fillFrom!.set.seconds)).toBeLessThan(0.05);
    // the washer waits for the fill here, so the period of a set goes with it, second by second
    const slower = fillFrom!.set.seconds - fillFrom!.byBook!;
    expect(period! - byBook.period!).toBeCloseTo(slower, 6);
    expect(runningRate).toBeCloseTo(4 / period!, 12);
  });

  it('foretell the fill of the floor that it is bound for, less surely', () => {
    const [here, there] = [bound(oxbow), bound(larkmoor)];
    expect(there.fillFrom!.from).toBe('OXBOW');
    const widthOf = ({ set }: NonNullable<typeof here.fillFrom>): number =>
      (set.high - set.low) / set.seconds;
    expect(widthOf(there.fillFrom!)).toBeGreaterThan(widthOf(here.fillFrom!));
    expect(there.runningRate).toBeGreaterThan(here.runningRate!);
  });

  it('say nothing of another format, nor of the builder’s floor where they were made at the site', () => {
    expect(bound(oxbow, { format: 'JUG' })).toEqual(bindShift(demoBook, oxbow));
    expect(bound(oxbow, { floor: 'LARKMOOR' }).fillFrom).toBeUndefined();
  });
});
