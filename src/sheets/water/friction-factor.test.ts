import fc from 'fast-check';
import { expect, it } from 'vitest';
import { frictionFactor, swameeJainFactor } from './friction-factor.ts';

const roughness = fc.oneof(fc.constant(0), fc.double({ min: 1e-7, max: 0.05, noNaN: true }));
const logRe = fc.double({ min: Math.log10(4000), max: 9, noNaN: true });

it('the turbulent factor solves Colebrook-White to 1e-12', () => {
  fc.assert(
    fc.property(logRe, roughness, (exponent, relative) => {
      const re = 10 ** exponent;
      const x = 1 / Math.sqrt(frictionFactor(re, relative));
      const right = -2 * Math.log10(relative / 3.7 + (2.51 * x) / re);
      return Math.abs(x - right) <= 1e-12 * x;
    }),
  );
});

it.each([
  ['Colebrook-White', frictionFactor],
  ['Swamee-Jain', swameeJainFactor],
])('%s joins laminar and transition without a step or a kink', (_, factor) => {
  for (const relative of [0, 1e-5, 1e-3, 0.00225, 0.02, 0.05]) {
    for (const [at, step] of [
      [2000, 1e-3],
      [4000, 1e-3],
    ] as const) {
      const below = factor(at - step, relative);
      const here = factor(at, relative);
      const above = factor(at + step, relative);
      expect(Math.abs(above - below)).toBeLessThan(1e-6);
      // slopes on both sides agree to the curvature over the step
      expect((here - below) / step).toBeCloseTo((above - here) / step, 7);
    }
  }
});

it('laminar flow does not feel the wall, rough turbulent flow not the viscosity', () => {
  expect(frictionFactor(1500, 0)).toBe(frictionFactor(1500, 0.05));
  expect(frictionFactor(1e9, 0.05)).toBeCloseTo(1 / (2 * Math.log10(3.7 / 0.05)) ** 2, 6);
});

it('Swamee-Jain lies within 3.5 % of Colebrook-White at 4 000 and within 0.9 % from 100 000', () => {
  for (const relative of [0, 1e-5, 1e-4, 1e-3, 0.005]) {
    const off = (re: number) => Math.abs(swameeJainFactor(re, relative) / frictionFactor(re, relative) - 1);
    expect(off(4000)).toBeLessThan(0.035);
    for (const re of [1e5, 1e6, 1e7]) expect(off(re)).toBeLessThan(0.009);
  }
});
