import fc from 'fast-check';
import { expect, it } from 'vitest';
import { criticalRatio, nozzleMassFlow } from './nozzle-discharge.ts';

const pressure = fc.double({ min: 1e3, max: 2e6, noNaN: true });

it('the choked and the other formula meet at the critical ratio, 0.5283', () => {
  expect(criticalRatio).toBeCloseTo(0.5283, 4);
  const at = (r: number) => nozzleMassFlow(1, 1e-4, 1e6, r * 1e6, 293.15);
  expect(at(criticalRatio + 1e-7) / at(criticalRatio)).toBeCloseTo(1, 9);
});

it('a leak grows with the square of the diameter and, choked, in proportion to the absolute pressure', () => {
  fc.assert(
    fc.property(pressure, fc.double({ min: 1.1, max: 5, noNaN: true }), (p, factor) => {
      const low = 0.4 * p;
      const one = nozzleMassFlow(0.7, 1e-6, p, low, 300);
      expect(nozzleMassFlow(0.7, 1e-6 * factor, p, low, 300) / one).toBeCloseTo(factor, 9);
      expect(nozzleMassFlow(0.7, 1e-6, factor * p, low, 300) / one).toBeCloseTo(factor, 9);
    }),
  );
});

it('nothing flows without a difference, and less back pressure never lets less through', () => {
  expect(nozzleMassFlow(1, 1e-4, 5e5, 5e5, 293.15)).toBe(0);
  fc.assert(
    fc.property(
      pressure,
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (p, a, b) => {
        const flow = (r: number) => nozzleMassFlow(1, 1e-4, p, r * p, 293.15);
        expect(flow(Math.min(a, b))).toBeGreaterThanOrEqual(flow(Math.max(a, b)) * (1 - 1e-12));
      },
    ),
  );
});
