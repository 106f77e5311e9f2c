import fc from 'fast-check';
import { Solver } from 'odex';
import { expect, it } from 'vitest';
import { bufferVolume, meanDemand } from './buffer-volume.ts';
import { lostTime, startedShare } from './inertia-lag.ts';
import { orificeConstant } from './orifice.ts';
import { drawDownTime } from './tank-draw-down.ts';

/** State after a time, by a general solver of differential equations. */
const solved = (
  slope: (y: readonly number[]) => number[],
  start: readonly number[],
  time: number,
): number[] => {
  const solver = new Solver(start.length);
  solver.absoluteTolerance = 1e-12;
  solver.relativeTolerance = 1e-12;
  return solver.solve((_, y) => slope(y), 0, [...start], time).y;
};

const levelAfter = (area: number, k: number, start: number, inflow: number, time: number): number =>
  solved(([h]) => [(inflow - k * Math.sqrt(Math.max(0, h!))) / area], [start], time)[0]!;

it('an ODE solver that runs for the closed form of the draw-down ends at its level', () => {
  const k = orificeConstant(0.025, 0.62);
  const area = 0.16 * Math.PI;
  for (const [start, end, inflow] of [
    [1, 0.2, 0],
    [1, 0.5, 0.0006],
    [0.05, 0.15, 0.0006],
    [1, 0.9, 1e-9],
  ] as const) {
    const time = drawDownTime(area, k, start, end, inflow);
    expect(levelAfter(area, k, start, inflow, time)).toBeCloseTo(end, 8);
  }
});

it('emptying takes exactly twice the time of the first flow', () => {
  const k = orificeConstant(0.025, 0.62);
  expect(drawDownTime(0.5, k, 1.44, 0, 0)).toBeCloseTo((2 * 0.5 * 1.44) / (k * 1.2), 9);
});

it('a trickle of inflow changes the draw-down by a trickle, a flood fills at its own rate', () => {
  const k = orificeConstant(0.01, 0.62);
  const dry = drawDownTime(1, k, 1, 0.5, 0);
  expect(drawDownTime(1, k, 1, 0.5, 1e-12) / dry).toBeCloseTo(1, 6);
  // 10 m3/s against 0.2 L/s out: the hole is lost in it, but for 2 in 100 000
  expect(drawDownTime(1, k, 0.5, 1, 10)).toBeCloseTo(0.05, 5);
});

it('a fill from rest loses what the ODE of the column loses', () => {
  const T = 1.7;
  for (const time of [0.1, 1, 5, 40]) {
    const [share, filled] = solved(([x]) => [(1 - x! * x!) / T, x!], [0, 0], time) as [number, number];
    expect(startedShare(time, T)).toBeCloseTo(share, 8);
    expect(lostTime(time, T)).toBeCloseTo(time - filled, 7);
  }
  expect(lostTime(1e9, T)).toBeCloseTo(T * Math.LN2, 12);
  expect(lostTime(1, 0)).toBe(0);
});

it('a buffer does not care where in its pattern the demand begins', () => {
  const pattern = fc.array(
    fc.tuple(fc.double({ min: 0.1, max: 10, noNaN: true }), fc.double({ min: 0, max: 0.01, noNaN: true })),
    { minLength: 1, maxLength: 6 },
  );
  fc.assert(
    fc.property(pattern, fc.nat(5), fc.double({ min: 1, max: 2, noNaN: true }), (pieces, turn, over) => {
      const turned = pieces.map((_, i) => pieces[(i + turn) % pieces.length]!);
      const durations = pieces.map(([t]) => t);
      const demands = pieces.map(([, q]) => q);
      const makeUp = over * meanDemand(durations, demands);
      const here = bufferVolume(durations, demands, makeUp);
      const there = bufferVolume(
        turned.map(([t]) => t),
        turned.map(([, q]) => q),
        makeUp,
      );
      return Math.abs(here - there) <= 1e-9;
    }),
  );
});

it('a make-up of the mean needs the whole swing, one of the peak needs no buffer', () => {
  expect(bufferVolume([2, 4], [0.003, 0], 0.001)).toBeCloseTo(0.004, 12);
  expect(bufferVolume([2, 4], [0.003, 0], 0.003)).toBe(0);
  expect(bufferVolume([2, 4], [0.003, 0], 0.0009)).toBe(Number.POSITIVE_INFINITY);
});
