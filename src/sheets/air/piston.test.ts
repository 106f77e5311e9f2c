import fc from 'fast-check';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { leastPressureSheet } from './least-pressure.ts';
import { pistonForceSheet } from './piston-force.ts';

const piston = fc.record({
  direction: fc.constantFrom('extend' as const, 'retract' as const),
  bore: fc.double({ min: 0.02, max: 0.2, noNaN: true }),
  rod: fc.double({ min: 0, max: 0.01, noNaN: true }),
  load: fc.double({ min: 1, max: 1e4, noNaN: true }),
  spring: fc.double({ min: 0, max: 100, noNaN: true }),
});

it('at the least pressure the load ratio is the one wanted, and a little less pressure loads it higher', () => {
  fc.assert(
    fc.property(piston, fc.double({ min: 0.2, max: 1, noNaN: true }), (inputs, loadRatio) => {
      const least = runSheet(leastPressureSheet, { ...inputs, loadRatio });
      if (!least.ok) throw new Error('refused');
      const pressure = least.value.outputs.leastPressure;
      fc.pre(pressure < 9e6);
      const ratio = (p: number) => {
        const run = runSheet(pistonForceSheet, { ...inputs, pressure: p });
        return run.ok ? run.value.outputs.loadRatio : Number.POSITIVE_INFINITY;
      };
      expect(ratio(pressure)).toBeCloseTo(loadRatio, 9);
      expect(ratio(0.999 * pressure)).toBeGreaterThan(loadRatio);
    }),
  );
});

it('a rod as thick as its bore or thicker is refused at the rod', () => {
  for (const rod of [0.05, 0.06]) {
    const run = runSheet(pistonForceSheet, { pressure: 6e5, bore: 0.05, rod, load: 10 });
    expect(run.ok ? [] : run.problems.map(({ code, path }) => [code, path])).toEqual([
      ['CYLINDER_ROD', 'rod'],
    ]);
  }
});
