import fc from 'fast-check';
import { expect, it } from 'vitest';
import { largestStart, largestStartPhasors } from './largest-start.ts';

const phasorSum = (a: number, angleA: number, b: number, angleB: number): number =>
  Math.hypot(a * Math.cos(angleA) + b * Math.cos(angleB), a * Math.sin(angleA) + b * Math.sin(angleB));

it('two currents of whatever power factor never add to more as phasors', () => {
  const current = fc.double({ min: 0, max: 1000, noNaN: true });
  const angle = fc.double({ min: -Math.PI / 2, max: Math.PI / 2, noNaN: true });
  fc.assert(
    fc.property(current, angle, current, angle, (a, angleA, b, angleB) => {
      expect(phasorSum(a, angleA, b, angleB)).toBeLessThanOrEqual(largestStart(a, b) * (1 + 1e-12));
    }),
  );
});

it('what both take of a feeder as one is what each takes of it alone, together', () => {
  const current = fc.double({ min: 0, max: 1000, noNaN: true });
  const factor = fc.double({ min: 0.05, max: 1, noNaN: true });
  const taken = (amperes: number, cos: number) =>
    amperes * (0.7 * cos + 0.1 * Math.sqrt(Math.max(0, 1 - cos * cos)));
  fc.assert(
    fc.property(current, factor, current, factor, (running, runs, start, starts) => {
      const both = largestStartPhasors(running, runs, start, starts);
      const apart = taken(running, runs) + taken(start, starts);
      expect(Math.abs(taken(both.current, both.powerFactor) - apart)).toBeLessThan(1e-5 * (1 + apart));
    }),
  );
});

it('61.5 A at 0.85 and a start of 85 A at 0.3 are 137.6 A as phasors, 6.5 % under the sum', () => {
  const phasors = phasorSum(61.5, Math.acos(0.85), 85, Math.acos(0.3));
  expect(phasors).toBeCloseTo(137.58, 2);
  expect(largestStart(61.5, 85) / phasors).toBeCloseTo(1.065, 3);
});
