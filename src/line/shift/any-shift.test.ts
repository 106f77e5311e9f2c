import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyShiftLine } from './any-shift-line.arbitrary.ts';
import { lineAt } from './line-at.ts';
import { nextWait } from './next-wait.ts';
import { mergeTallies, runShifts } from './run-shifts.ts';
import { shiftFigures } from './shift-figures.ts';
import { ShiftMachine } from './shift-machine.ts';
import { traceShift } from './trace-shift.ts';

/** s; each cause that took less than a billionth of the shift is left out of the list. */
const unlisted = 1e-5;
const seeds = fc.integer({ min: 0, max: 1e9 });

describe('any line, run for a shift', () => {
  it('has put on as many bottles as it took off, lost and holds, at every moment', () => {
    fc.assert(
      fc.property(
        anyShiftLine(),
        seeds,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 2, maxLength: 3 }),
        (line, seed, shares) => {
          const trace = traceShift(line, seed, 0);
          const atStart = line.start === 'washer full' ? line.washer!.rows * line.washer!.row : 0;
          for (const part of [...shares, 1]) {
            const { groups, put, good, lost } = lineAt(trace, part * trace.end);
            const held = groups.reduce((sum, { bottles }) => sum + bottles, 0);
            expect(good + lost + held).toBe(atStart + put);
            for (const { progress } of groups) expect(progress >= 0 && progress <= 1).toBe(true);
          }
        },
      ),
      { numRuns: 120 },
    );
  });

  it('counts the bottles that its moments show', () => {
    fc.assert(
      fc.property(anyShiftLine(), seeds, (line, seed) => {
        const machine = new ShiftMachine(line);
        machine.run(seed, 0);
        const trace = traceShift(line, seed, 0);
        const none = { put: 0, good: 0, lost: 0 };
        const from = line.warmUp === 0 ? none : lineAt(trace, line.warmUp);
        const to = lineAt(trace, trace.end);
        expect(machine.counts.put).toBe(to.put - from.put);
        expect(machine.counts.good).toBe(to.good - from.good);
        expect(machine.counts.fallen + machine.counts.rejected).toBe(to.lost - from.lost);
      }),
      { numRuns: 60 },
    );
  });

  it('spends all its seconds: each station and the core of the line', () => {
    fc.assert(
      fc.property(anyShiftLine(), seeds, (line, seed) => {
        const figures = shiftFigures(line, runShifts(line, { seed, first: 0, shifts: 1 }));
        for (const { station, states } of figures.stations) {
          if (station === 'D') continue;
          const spent = Object.values(states).reduce((sum, { mean }) => sum + mean, 0);
          expect(Math.abs(spent - line.duration)).toBeLessThan(unlisted);
        }
        const spent = figures.minutes.reduce((sum, { seconds }) => sum + seconds.mean, 0);
        expect(Math.abs(spent - line.duration)).toBeLessThan(unlisted);
        // what the core does on its own account is what its station does
        const core = figures.stations.find(({ station }) => station === figures.core)!;
        for (const state of ['running', 'stopped', 'starved', 'blocked', 'held'] as const) {
          const of = figures.minutes.filter((part) => part.state === state);
          const sum = of.reduce((total, { seconds }) => total + seconds.mean, 0);
          expect(Math.abs(sum - core.states[state].mean)).toBeLessThan(unlisted);
        }
      }),
      { numRuns: 120 },
    );
  });

  it('shows each station without a gap, in the states that were counted', () => {
    fc.assert(
      fc.property(anyShiftLine(), seeds, (line, seed) => {
        const still = { ...line, warmUp: 0 };
        const trace = traceShift(still, seed, 0);
        const { stations } = shiftFigures(still, runShifts(still, { seed, first: 0, shifts: 1 }));
        for (const { station, of } of trace.periods) {
          const spent = new Map<string, number>();
          of.forEach((period, i) => {
            expect(Math.abs(period.since - (of[i - 1]?.until ?? 0))).toBeLessThan(1e-6);
            const seconds = Math.min(period.until, trace.end) - Math.min(period.since, trace.end);
            spent.set(period.state, (spent.get(period.state) ?? 0) + seconds);
          });
          if (station === 'D') continue;
          const { states } = stations.find((counted) => counted.station === station)!;
          for (const [state, { mean }] of Object.entries(states)) {
            expect(Math.abs((spent.get(state) ?? 0) - mean)).toBeLessThan(1e-4);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('is led from wait to wait in the order of time, without end only where there is none', () => {
    fc.assert(
      fc.property(anyShiftLine(), seeds, (line, seed) => {
        const trace = traceShift(line, seed, 0);
        let at = 0;
        for (let i = 0; i < 20; i++) {
          const wait = nextWait(trace, at, 1);
          if (wait === undefined) break;
          expect(wait.since).toBeGreaterThan(at);
          expect(wait.state).not.toBe('running');
          const there = lineAt(trace, wait.since + 0.5).stations;
          expect(there.find(({ station }) => station === wait.station)).toEqual(wait);
          at = wait.since;
        }
      }),
      { numRuns: 50 },
    );
  });

  it('gives the same shifts however they are parted', () => {
    fc.assert(
      fc.property(anyShiftLine(), seeds, (line, seed) => {
        const whole = runShifts(line, { seed, first: 0, shifts: 6 });
        const parts = mergeTallies([
          runShifts(line, { seed, first: 0, shifts: 2 }),
          runShifts(line, { seed, first: 2, shifts: 1 }),
          runShifts(line, { seed, first: 3, shifts: 3 }),
        ]);
        expect(parts.goods).toEqual(whole.goods);
        expect(parts.shifts).toBe(6);
        whole.means.forEach((mean, i) => {
          expect(Math.abs(parts.means[i]! - mean)).toBeLessThan(1e-9 * (1 + Math.abs(mean)));
          expect(Math.abs(parts.squares[i]! - whole.squares[i]!)).toBeLessThan(
            1e-6 * (1 + whole.squares[i]!),
          );
        });
      }),
      { numRuns: 40 },
    );
  });
});
