import fc from 'fast-check';
import { Solver } from 'odex';
import { expect, it } from 'vitest';
import { fillTime } from './filling-time.ts';
import { restrictionFlow } from './restriction-flow.ts';
import { ventTime } from './vent-time.ts';

/** Pressure after a time, by a general solver of differential equations. */
const solved = (slope: (p: number) => number, start: number, time: number): number => {
  const solver = new Solver(1);
  solver.absoluteTolerance = 1e-6;
  solver.relativeTolerance = 1e-11;
  return solver.solve((_, y) => [slope(y[0]!)], 0, [start], time).y[0]!;
};

const inputs = fc.record({
  b: fc.double({ min: 0.1, max: 0.8, noNaN: true }),
  C: fc.double({ min: 1e-9, max: 1e-7, noNaN: true }),
  T: fc.double({ min: 260, max: 330, noNaN: true }),
});

it('an ODE solver that runs for the closed form of a fill ends at its pressure', () => {
  fc.assert(
    fc.property(inputs, fc.double({ min: 2e5, max: 6.8e5, noNaN: true }), ({ b, C, T }, end) => {
      const time = fillTime(0.01, C, b, 1e5, end, 7e5, T);
      // isothermal: the pressure rises with the free air by p_n T/(V T_n)
      const slope = (p: number) => (restrictionFlow(C, b, 7e5, p, T) * 1e5 * T) / (0.01 * 293.15);
      expect(solved(slope, 1e5, time) / end).toBeCloseTo(1, 6);
    }),
    { numRuns: 40 },
  );
});

it('an ODE solver that runs for the closed form of a vent ends at its pressure', () => {
  fc.assert(
    fc.property(inputs, fc.double({ min: 1.1e5, max: 6e5, noNaN: true }), ({ b, C, T }, end) => {
      const time = ventTime(0.01, C, b, 7e5, end, 1e5, T);
      const slope = (p: number) => (-restrictionFlow(C, b, p, 1e5, T) * 1e5 * T) / (0.01 * 293.15);
      expect(solved(slope, 7e5, time) / end).toBeCloseTo(1, 6);
    }),
    { numRuns: 40 },
  );
});

it('the integral is the same on both sides of b = 1/2', () => {
  const at = (b: number) => ventTime(0.01, 2e-8, b, 7e5, 1.1e5, 1e5, 293.15);
  expect(at(0.5 - 1e-10)).toBeCloseTo(at(0.5), 8);
  expect(at(0.5 + 1e-10)).toBeCloseTo(at(0.5), 8);
  expect(at(0.5 + 1e-5)).toBeCloseTo(at(0.5 - 1e-5), 3);
});

it('a time in two parts is their sum, and equality is reached in a finite time', () => {
  const whole = fillTime(0.01, 2e-8, 0.3, 1e5, 7e5, 7e5, 293.15);
  const parts =
    fillTime(0.01, 2e-8, 0.3, 1e5, 4e5, 7e5, 293.15) + fillTime(0.01, 2e-8, 0.3, 4e5, 7e5, 7e5, 293.15);
  expect(parts).toBeCloseTo(whole, 9);
  const vent = ventTime(0.01, 2e-8, 0.3, 7e5, 1e5, 1e5, 293.15);
  expect(
    ventTime(0.01, 2e-8, 0.3, 7e5, 2e5, 1e5, 293.15) + ventTime(0.01, 2e-8, 0.3, 2e5, 1e5, 1e5, 293.15),
  ).toBeCloseTo(vent, 9);
});
