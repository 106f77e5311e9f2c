import { Solver } from 'odex';
import { expect, it } from 'vitest';
import { runSheet } from '../frame.ts';
import { restrictionFlow } from './restriction-flow.ts';
import { type Stroke, strokeTimes } from './stroke-motion.ts';
import { strokeTimeCases } from './stroke-time.cases.ts';
import { strokeTimeSheet, terminalSpeed } from './stroke-time.ts';

const at = (bar: number): Stroke => ({
  driven: 0.25 * Math.PI * 0.05 ** 2,
  exhausting: 0.25 * Math.PI * (0.05 ** 2 - 0.02 ** 2),
  stroke: 0.2,
  deadDriven: 50e-6,
  deadExhausting: 50e-6,
  supplyConductance: 1.5e-8,
  supplyRatio: 0.3,
  exhaustConductance: 1.2e-8,
  exhaustRatio: 0.3,
  supply: bar * 1e5 + 101300,
  atmosphere: 101300,
  resistance: 408.31,
  mass: 10,
});

/** Where the piston is after a time, by a general solver, the equations written down anew in absolute volumes of air. */
const placeAfter = (s: Stroke, n: number, time: number): number => {
  const solver = new Solver(4);
  solver.absoluteTolerance = 1e-9;
  solver.relativeTolerance = 1e-8;
  const y = solver.solve(
    (_, [pd, pb, x, v]) => {
      const inflow = restrictionFlow(s.supplyConductance, s.supplyRatio, s.supply, pd! * 1e5, 293.15);
      const outflow = restrictionFlow(s.exhaustConductance, s.exhaustRatio, pb! * 1e5, s.atmosphere, 293.15);
      const force =
        1e5 * (pd! * s.driven - pb! * s.exhausting) - s.atmosphere * (s.driven - s.exhausting) - s.resistance;
      const rests = v! <= 0 && force < 0;
      return [
        (n * (inflow - pd! * s.driven * v!)) / (s.deadDriven + s.driven * x!),
        (n * (pb! * s.exhausting * v! - outflow)) / (s.deadExhausting + s.exhausting * (s.stroke - x!)),
        v!,
        rests ? 0 : force / s.mass,
      ];
    },
    0,
    [s.atmosphere / 1e5, s.supply / 1e5, 0, 0],
    time,
  ).y;
  return y[2]!;
};

it('a general ODE solver has the piston at its end after the time of the stroke, within 1 %', () => {
  for (const bar of [5.516, 4.137, 3]) {
    for (const n of [1, 1.4]) {
      const times = strokeTimes(at(bar), n);
      if (times === undefined) throw new Error('did not arrive');
      expect(placeAfter(at(bar), n, times.total) / 0.2).toBeCloseTo(1, 2);
    }
  }
});

it('less pressure never makes a stroke faster, and below the stall pressure nothing moves', () => {
  let last = 0;
  for (const bar of [10, 7, 5, 4, 3, 2.5, 2.2, 2.1]) {
    const times = strokeTimes(at(bar), 1);
    expect(times?.total ?? Number.NaN).toBeGreaterThanOrEqual(last);
    last = times?.total ?? Number.NaN;
  }
  expect(terminalSpeed(at(2))).toBe(0);
  const run = runSheet(strokeTimeSheet, { ...strokeTimeCases[0]!.inputs, pressure: 2e5 });
  expect(run.ok ? [] : run.problems.map(({ code, path }) => [code, path])).toEqual([
    ['STROKE_STALLS', 'pressure'],
  ]);
});

it('the stroke takes longer than its way at the speed at which it no longer accelerates', () => {
  for (const bar of [5.516, 4.137, 3, 2.5]) {
    const times = strokeTimes(at(bar), 1);
    const moving = (times?.total ?? 0) - (times?.breakaway ?? 0);
    // 23 to 27 % of the moving time, as the two formulations found
    const short = 1 - 0.2 / terminalSpeed(at(bar)) / moving;
    expect(short).toBeGreaterThan(0.15);
    expect(short).toBeLessThan(0.35);
  }
});

it('speed hardly falls until the load ratio nears one half, then it collapses', () => {
  const full = terminalSpeed(at(5.516));
  expect(terminalSpeed(at(4.137)) / full).toBeGreaterThan(0.95);
  expect(terminalSpeed(at(2.5)) / full).toBeLessThan(0.6);
  expect(terminalSpeed(at(2.2)) / full).toBeLessThan(0.35);
});
