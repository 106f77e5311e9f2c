import { describe, expect, it } from 'vitest';
import { normalCdf } from '../statistics/normal.ts';
import { censored } from './censored.ts';

const logAbove = (bound: number, mean: number, deviation: number): number =>
  Math.log(normalCdf((mean - bound) / deviation));

describe('a value of which only a lower bound is known', () => {
  it.each([-4, -1, 0, 0.7, 3, 8])(
    'pulls with the slope and weighs with the bend of its likelihood: %f',
    (a) => {
      const { pull, weight } = censored(10 + 2 * a, 10, 2);
      const step = 1e-4;
      const [down, here, up] = [-step, 0, step].map((by) => logAbove(10 + 2 * a, 10 + 2 * by, 2));
      expect(pull).toBeCloseTo((up! - down!) / (2 * step), 5);
      expect(weight).toBeCloseTo(-(up! - 2 * here! + down!) / (step * step), 4);
    },
  );

  // J. Tobin 1958; the inverse Mills ratio at 0 is sqrt(2/pi)
  it('at its own mean pulls with sqrt(2/pi) deviations', () => {
    expect(censored(5, 5, 1).pull).toBeCloseTo(Math.sqrt(2 / Math.PI), 12);
    expect(censored(5, 5, 1).weight).toBeCloseTo(2 / Math.PI, 12);
  });

  it('far below its mean says nothing, far above as much as a whole one', () => {
    expect(censored(0, 9, 1).weight).toBeLessThan(1e-12);
    expect(censored(60, 0, 1).weight).toBeCloseTo(1, 2);
    expect(Number.isFinite(censored(1e6, 0, 1).pull)).toBe(true);
  });
});
