import fc from 'fast-check';
import { expect, it } from 'vitest';
import { faultVector } from './fault-vector.ts';

const path = fc.record({
  apparentPower: fc.double({ min: 1e4, max: 2e6, noNaN: true }),
  voltage: fc.constantFrom(208, 400, 480),
  impedance: fc.double({ min: 0.015, max: 0.07, noNaN: true }),
  tolerance: fc.constantFrom('as-marked' as const, 'least-0.9' as const),
  reactanceRatio: fc.double({ min: 0.5, max: 10, noNaN: true }),
  length: fc.double({ min: 0, max: 300, noNaN: true }),
  resistance: fc.double({ min: 5e-5, max: 1e-2, noNaN: true }),
  reactance: fc.double({ min: 5e-5, max: 3e-4, noNaN: true }),
  parallel: fc.integer({ min: 1, max: 4 }),
});

it('added as numbers the current is never more than as vectors, and neither more than at the terminals', () => {
  fc.assert(
    fc.property(path, (one) => {
      const { terminals, current, arithmetic } = faultVector(one);
      return arithmetic <= current * (1 + 1e-12) && current <= terminals * (1 + 1e-12);
    }),
  );
});

it('a run of no length leaves the current of the terminals', () => {
  fc.assert(
    fc.property(path, (one) => {
      const { terminals, current } = faultVector({ ...one, length: 0 });
      expect(current / terminals).toBeCloseTo(1, 12);
    }),
  );
});

it('a longer run never carries more', () => {
  fc.assert(
    fc.property(
      path,
      (one) => faultVector({ ...one, length: one.length + 1 }).current < faultVector(one).current,
    ),
  );
});
