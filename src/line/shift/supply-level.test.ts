import { describe, expect, it } from 'vitest';
import { stationsInARow } from '../testing/stations-in-a-row.ts';
import { runShifts } from './run-shifts.ts';
import { shiftFigures } from './shift-figures.ts';
import type { ShiftLine } from './shift-line.ts';

/** A bottle of 1 l every 10 s from a tank that gives 100.5 l and is made up by 0.04 l/s. */
const line = (usable: number, makeUp: number): ShiftLine => {
  const row = stationsInARow({ duration: 3600, first: { seconds: 0 }, second: { seconds: 1 } });
  return {
    ...row,
    fill: {
      ...row.fill!,
      supply: { drawn: [0, 1], seconds: [10, 10], perBottle: 0.001, makeUp, usable },
    },
  };
};
const figures = (usable: number, makeUp: number) =>
  shiftFigures(line(usable, makeUp), runShifts(line(usable, makeUp), { seed: 1, first: 0, shifts: 2 }));

describe('a tank that runs down in a shift', () => {
  it('is dry when what was drawn and not made up is all that it gave, by its balance of masses', () => {
    // 0.1 - 0.04 l/s are lost: 100.5 l are gone in the 168th fill, 1675 s after the start; 167 were filled before
    const { ranDry, good } = figures(0.1005, 4e-5);
    expect(ranDry).toEqual({ share: 1, at: 1670, bottles: 167 });
    // from then on a bottle takes 25 s of make-up
    const after = (3600 - 1675) / 25;
    expect(Math.abs(good.mean - (167 + after))).toBeLessThan(2);
  });

  it('never is where the make-up carries the draw, or the tank the shift', () => {
    expect(figures(0.1005, 1.01e-4).ranDry).toBeUndefined();
    expect(figures(0.06 * 3.6 * 1.01, 4e-5).ranDry).toBeUndefined();
  });

  it('gives nothing more where nothing makes it up, and tells when', () => {
    const { ranDry, good } = figures(0.0205, 0);
    expect(ranDry?.at).toBe(200);
    expect(good.mean).toBe(20);
  });
});
