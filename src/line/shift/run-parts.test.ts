import { describe, expect, it } from 'vitest';
import { flagonShift } from '../testing/flagon-shift.ts';
import { goodsOfShifts, runPart, sumsOfShifts } from './run-parts.ts';
import { runShifts } from './run-shifts.ts';

const plan = { seed: 5, shifts: 130 };
const sums = sumsOfShifts(flagonShift, plan);

describe('shifts in parts', () => {
  it('give the sums of the whole, but for the last bits', () => {
    const whole = runShifts(flagonShift, { ...plan, first: 0 });
    expect(sums.shifts).toBe(130);
    expect(sums.goods).toEqual(whole.goods);
    for (const [i, mean] of whole.means.entries()) {
      // sums of doubles in another order: a few parts in 2^53 for each of 130 shifts
      expect(Math.abs(sums.means[i]! - mean)).toBeLessThanOrEqual(1e-12 * Math.abs(mean));
    }
  });

  it('give the same to the last bit in whatever order they are run', () => {
    const backwards = sumsOfShifts(flagonShift, {
      ...plan,
      runParts: (asked, parts) =>
        [...parts]
          .reverse()
          .map((part) => runPart(asked, part))
          .reverse(),
    });
    expect(backwards).toEqual(sums);
  });

  it('list the good bottles of each shift once, in order, and as often as the sums count them', () => {
    const goods = goodsOfShifts(flagonShift, plan);
    expect(goods).toHaveLength(130);
    sums.goods.forEach((shifts, good) => {
      expect(goods.filter((one) => one === good)).toHaveLength(shifts);
    });
    expect(goods[120]).toBe(runShifts(flagonShift, { seed: 5, first: 120, shifts: 1 }).goods.length - 1);
  });
});
