import { describe, expect, it } from 'vitest';
import { agreedBetween, plannedRuns, reachedRun, stopTimes } from './proof-figures.ts';

const of = (mean: number) => ({ mean, spread: 0 });
const cause = (strikes: number, lost: number) => ({
  cause: 'JAM',
  stations: ['+CAP'],
  owner: 'machine' as const,
  strikes: of(strikes),
  stood: of(lost),
  lost: of(lost),
});

describe('the stops of a line as one', () => {
  it('leave the share of the shift that was not lost', () => {
    const times = stopTimes({ causes: [cause(10, 900), cause(5, 600)] }, 28_800)!;
    expect(times).toEqual({ between: (28_800 - 1500) / 15, clear: 100 });
    expect(times.between / (times.between + times.clear)).toBeCloseTo((28_800 - 1500) / 28_800, 12);
    expect(stopTimes({ causes: [] }, 28_800)).toBeUndefined();
  });
  it('come seldom enough for an agreed efficiency where availability is just that', () => {
    const between = agreedBetween(0.92, 100);
    expect(between / (between + 100)).toBeCloseTo(0.92, 12);
  });
});

describe('a proof run', () => {
  it('of an hour between stops with two allowed lasts 6.2958 h at 95 % (chi-squared table: 12.592/2)', () => {
    const [run] = plannedRuns(3600, 4 * 3600, 0.95, [2]);
    expect(run!.running / 3600).toBeCloseTo(12.592 / 2, 3);
  });
  it('without a stop shows at 90 % its running over 2.3026, the natural logarithm of ten', () => {
    const reached = reachedRun({ seconds: 3600, stood: 0, good: 1000, stops: 0 }, 0.9);
    expect(reached.between).toBeCloseTo(3600 / Math.log(10), 6);
    expect(reached.availability).toBeUndefined();
  });
});
