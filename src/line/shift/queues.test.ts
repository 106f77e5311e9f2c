import { describe, expect, it } from 'vitest';
import { twoStationsInTime } from '../../sheets/rate/two-stations-in-time.ts';
import { twoStationsUneven } from '../../sheets/rate/two-stations-uneven.ts';
import { twoStationsWithRoom } from '../../sheets/rate/two-stations-with-room.ts';
import { waitingBeforeStation } from '../../sheets/rate/waiting-before-station.ts';
import { waitingLimitedRoom } from '../../sheets/rate/waiting-limited-room.ts';
import { stationsInARow } from '../testing/stations-in-a-row.ts';
import { boundsOf } from './bounds-of.ts';
import { runShifts } from './run-shifts.ts';
import { shiftFigures } from './shift-figures.ts';
import type { ShiftLine } from './shift-line.ts';
import type { Figure, ShiftFigures } from './shift-result.ts';
import type { StopCause } from './stop-cause.ts';

/**
 * Stations of the line arranged as lines whose figures are known exactly. Seeds are fixed; the exact value must lie inside
 * the 99 % interval over the runs, and the interval be narrow enough to tell it from its neighbours.
 */
const run = (line: ShiftLine, shifts: number, seed = 11): ShiftFigures =>
  shiftFigures(line, runShifts(line, { seed, first: 0, shifts }));

const holds = (figure: Figure, exact: number, shifts: number, within: number, scale = 1): void => {
  const { low, high } = boundsOf({ mean: figure.mean / scale, spread: figure.spread / scale }, shifts, 0.99)!;
  expect(low).toBeLessThanOrEqual(exact);
  expect(high).toBeGreaterThanOrEqual(exact);
  expect(high - low).toBeLessThan(2 * within * exact);
};

const exponential = (mean: number) => ({ kind: 'exponential', mean }) as const;

describe('one station, M/M/1', () => {
  const shifts = 60;
  it('load 0.5: one bottle there, half a bottle waits', () => {
    // acceptance reference F7; J. F. Shortle and others, Fundamentals of Queueing Theory (memory)
    const { waiting, present } = waitingBeforeStation({ arrivals: 0.5, pace: 1, variation: 1 });
    expect(present).toBeCloseTo(1, 12);
    const line = stationsInARow({
      duration: 10_000,
      warmUp: 500,
      load: exponential(2),
      second: { seconds: exponential(1) },
    });
    const figures = run(line, shifts);
    const station = figures.stations.find((s) => s.station === 'B')!;
    holds(station.waiting, waiting, shifts, 0.04);
    holds(station.states.running, 0.5, shifts, 0.01, line.duration);
    holds(figures.good, 0.5, shifts, 0.01, line.duration);
  });

  it('load 0.9: 8.1 wait; with a constant time half of it', () => {
    const { waiting } = waitingBeforeStation({ arrivals: 0.9, pace: 1, variation: 1 });
    expect(waiting).toBeCloseTo(8.1, 12);
    const line = stationsInARow({
      duration: 30_000,
      warmUp: 3000,
      load: exponential(1 / 0.9),
      second: { seconds: exponential(1) },
    });
    holds(run(line, shifts).stations[1]!.waiting, waiting, shifts, 0.1);
    const cam = { ...line, closing: { ...line.closing!, perBottle: 1 } };
    const half = waitingBeforeStation({ arrivals: 0.9, pace: 1, variation: 0 }).waiting;
    holds(run(cam, shifts).stations[1]!.waiting, half, shifts, 0.1);
  });
});

describe('one station of limited room, M/M/1/K', () => {
  it('K = 3 at 8 and 9 an hour: empty 0.2957 of the time, 6.338 an hour pass', () => {
    // published example with P0 = 0.29574037 and P3 = 0.20770791 (acceptance reference, check case 4: read)
    const exact = waitingLimitedRoom({ arrivals: 8, pace: 9, heads: 1, room: 3 });
    expect(exact.empty).toBeCloseTo(0.29574037, 8);
    // who is turned away by a full room is a first station that stands blocked: its times have no memory
    const line = stationsInARow({
      duration: 3600 * 300,
      warmUp: 3600 * 3,
      first: { seconds: exponential(3600 / 8) },
      second: { seconds: exponential(400), room: 2 },
    });
    const shifts = 60;
    const figures = run(line, shifts);
    const [first, second] = figures.stations;
    holds(figures.good, exact.passed * 300, shifts, 0.01);
    holds(second!.states.starved, exact.empty, shifts, 0.02, line.duration);
    holds(first!.states.blocked, exact.full, shifts, 0.03, line.duration);
  });
});

describe('causes that one person clears in turn, machine repair', () => {
  it('five alike, 60 min apart and 10 min to clear: none open as by the finite source', () => {
    // M/M/1//N: P_n = N!/(N-n)! (lambda/mu)^n P_0; D. Gross, C. M. Harris, Fundamentals of Queueing Theory, 2.7 (memory)
    let [sum, term] = [1, 1];
    for (let n = 1; n <= 5; n++) {
      term *= (6 - n) * (10 / 60);
      sum += term;
    }
    const stops: readonly StopCause[] = [1, 2, 3, 4, 5].map((i) => ({
      cause: `-${i}`,
      between: 3600,
      clear: 600,
      owner: 'machine',
      counts: 'clock',
    }));
    const line = stationsInARow({
      duration: 3600 * 100,
      warmUp: 3600 * 20,
      second: { seconds: 10, stops },
    });
    const shifts = 100;
    const figures = run(line, shifts);
    holds(figures.stations[0]!.states.running, 1 / sum, shifts, 0.03, line.duration);
    // each is open or waits to be cleared as often as the other
    const struck = figures.causes.reduce((total, { strikes }) => total + strikes.mean, 0) / 100;
    expect(Math.abs(struck - 6 * (1 - 1 / sum))).toBeLessThan(0.05);
  });
});

describe('two stations with room between them', () => {
  const byStep = (cause: string, p: number, r: number): StopCause => ({
    cause,
    between: 1 / p,
    clear: 1 / r,
    owner: 'machine',
    pattern: { kind: 'geometric', step: 1 },
  });
  const cases = [
    { p1: 0.01, r1: 0.1, p2: 0.01, r2: 0.1, room: 10, efficiency: 0.85617493, starved: 0.05820758 },
    { p1: 0.05, r1: 0.2, p2: 0.02, r2: 0.1, room: 10, efficiency: 0.73626233, starved: 0.1164852 },
    { p1: 0.005, r1: 0.05, p2: 0.02, r2: 0.2, room: 50, efficiency: 0.88407966, starved: 0.02751237 },
  ];
  it.each(cases)('stops by the cycle, room for $room: $efficiency of the pace', (c) => {
    // Buzacott and Gershwin's line; figures of its Markov chain, acceptance reference, check case 6 (computed)
    const exact = twoStationsWithRoom({
      stopFirst: c.p1,
      clearFirst: c.r1,
      stopSecond: c.p2,
      clearSecond: c.r2,
      room: c.room,
    });
    expect(exact.efficiency).toBeCloseTo(c.efficiency, 8);
    const line = stationsInARow({
      duration: 8000,
      warmUp: 1000,
      first: { seconds: 1, stops: [byStep('a', c.p1, c.r1)] },
      second: { seconds: 1, room: c.room - 1, stops: [byStep('b', c.p2, c.r2)] },
    });
    const shifts = 80;
    const figures = run(line, shifts);
    holds(figures.good, exact.efficiency, shifts, 0.01, line.duration);
    holds(figures.stations[1]!.states.starved, exact.starved, shifts, 0.25, line.duration);
    expect(exact.starved).toBeCloseTo(c.starved, 7);
  });

  it.each([
    [100, 20, 0.871369],
    [20, 10, 0.56],
  ])('a stop in %i s of 10 s, room for %i: %f of the pace', (between, room, printed) => {
    // limit of the line by cycles, acceptance reference F10 and check case 7 (computed)
    const exact = twoStationsInTime({ betweenStops: between, clearing: 10, rate: 1, room }).efficiency;
    expect(exact).toBeCloseTo(printed, 5);
    // a fluid is bottles so small that none is seen: ten to what was one
    const small = 10;
    const stop = (cause: string): StopCause => ({
      cause,
      between: between * small,
      clear: 10 * small,
      owner: 'machine',
    });
    const line = stationsInARow({
      duration: 60_000,
      warmUp: 6000,
      first: { seconds: 1, stops: [stop('a')] },
      second: { seconds: 1, room: room * small, stops: [stop('b')] },
    });
    const shifts = 60;
    holds(run(line, shifts).good, exact, shifts, 0.015, line.duration);
  });

  it.each([
    [0, 2 / 3],
    [1, 3 / 4],
    [2, 4 / 5],
    [5, 7 / 8],
  ])('times without memory, %i places between: %f', (places, exact) => {
    // F. S. Hunt, Sequential arrays of waiting lines, 1956 (memory); birth and death equations (computed)
    expect(twoStationsUneven({ first: 1, second: 1, room: places }).throughput).toBeCloseTo(exact, 12);
    const line = stationsInARow({
      duration: 5000,
      warmUp: 200,
      first: { seconds: exponential(1) },
      second: { seconds: exponential(1), room: places + 1 },
    });
    const shifts = 60;
    holds(run(line, shifts).good, exact, shifts, 0.01, line.duration);
  });
});

describe('three stations without room', () => {
  it('of times without memory give 22/39 of the pace of one', () => {
    // F. S. Hunt, Sequential arrays of waiting lines, 1956 (memory); its Markov chain (computed)
    const line = stationsInARow({
      duration: 5000,
      warmUp: 200,
      first: { seconds: exponential(1) },
      second: { seconds: exponential(1), room: 1 },
      third: { seconds: exponential(1), room: 1 },
    });
    const shifts = 80;
    holds(run(line, shifts).good, 22 / 39, shifts, 0.01, line.duration);
  });
});
