import { describe, expect, it } from 'vitest';
import type { RowFill } from '../../hydraulics/filled-row.ts';
import type { FillSystem } from '../../hydraulics/system.ts';
import { fillSpread } from './fill-spread.ts';

/** Lanes that are alike: 10 s, a pulse in half a second either way. */
const alike = (lanes: number, phase = 5e-5) => {
  const row = {
    fillTime: 10,
    lanes: Array.from({ length: lanes }, () => ({ fillTime: 10, flowAtEnd: 1e-4 })),
  } as unknown as RowFill;
  const system = { lanes: Array.from({ length: lanes }, () => ({ phase })) } as unknown as FillSystem;
  return { system, row };
};

const meanOf = (quantiles: readonly number[]): number =>
  quantiles.slice(1).reduce((sum, q, i) => sum + 0.5 * (q + quantiles[i]!), 0) / (quantiles.length - 1);

describe('how the slowest lane varies from set to set', () => {
  // greatest of n numbers drawn evenly from -h to h: mean h (n - 1)/(n + 1); order statistics, any textbook (memory)
  it.each([1, 2, 4, 8])('is the greatest of %i starts between two pulses', (lanes) => {
    const { system, row } = alike(lanes);
    const draw = fillSpread(system, row, 0);
    if (typeof draw === 'number' || draw.kind !== 'quantiles') throw new Error('no spread');
    const [least, most] = [draw.quantiles[0]!, draw.quantiles.at(-1)!];
    expect(least).toBeGreaterThanOrEqual(9.5);
    expect(most).toBeCloseTo(10.5, 9);
    // straight pieces between 33 quantiles, of which the first bends most
    expect(meanOf(draw.quantiles)).toBeCloseTo(10 + (0.5 * (lanes - 1)) / (lanes + 1), 1.7);
    // a set is under its middle quantile as often as over it: (1/2)^(1/n) of the way
    expect(draw.quantiles[16]).toBeCloseTo(9.5 + 0.5 ** (1 / lanes), 9);
  });

  it('is none where every meter starts at a pulse', () => {
    const { system, row } = alike(4, 0);
    expect(fillSpread(system, row, 10)).toBe(0);
  });
});
