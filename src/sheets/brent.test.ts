import fc from 'fast-check';
import { expect, it } from 'vitest';
import { brentMinimum } from './brent-minimum.ts';
import { brentRoot } from './brent-root.ts';

it('finds the roots that are known', () => {
  expect(brentRoot(Math.cos, 0, 3)).toBeCloseTo(Math.PI / 2, 14);
  expect(brentRoot((x) => x ** 3 - 2 * x - 5, 2, 3)).toBeCloseTo(2.0945514815423265, 14);
  expect(brentRoot((x) => Math.exp(x) - 1, -50, 1)).toBeCloseTo(0, 14);
  expect(brentRoot((x) => (x < 0.3 ? -1 : 1), 0, 1)).toBeCloseTo(0.3, 12);
});

it('takes an end that is a root, and says NaN where the ends bracket none', () => {
  expect(brentRoot((x) => x, 0, 1)).toBe(0);
  expect(brentRoot((x) => x - 1, 0, 1)).toBe(1);
  expect(brentRoot((x) => x + 1, 0, 1)).toBeNaN();
});

it('finds the root of any rising power, steep or flat', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 9, noNaN: true }),
      fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
      (power, root) => Math.abs(brentRoot((x) => x ** power - root ** power, 0, 2e3) / root - 1) < 1e-9,
    ),
  );
});

it('needs few calls where the function is smooth', () => {
  let calls = 0;
  brentRoot(
    (x) => {
      calls += 1;
      return x * x - 2;
    },
    0,
    4,
  );
  expect(calls).toBeLessThan(14);
});

it('finds the minimum of a parabola, of a kink, and at an end', () => {
  expect(brentMinimum((x) => (x - 0.7) ** 2, -3, 5)).toBeCloseTo(0.7, 7);
  expect(brentMinimum((x) => Math.abs(x - 0.25), 0, 1)).toBeCloseTo(0.25, 6);
  expect(brentMinimum((x) => x, 2, 3)).toBeCloseTo(2, 6);
});
