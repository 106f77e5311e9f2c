import { describe, expect, it } from 'vitest';
import { runShifts, shiftFigures } from '../../line/shift/index.ts';
import { bindShift } from './bind-shift.ts';
import type { LoggedRun } from './shift-records.ts';
import { demoBook, larkmoor } from './testing/demo-shift.ts';

const at = (minutes: number): string => new Date(Date.UTC(2027, 3, 20, 6) + 60_000 * minutes).toISOString();
const stop = (cause: string, from: number, minutes: number) => ({
  cause,
  from: at(from),
  to: at(from + minutes),
});
const run = (stops?: LoggedRun['stops'], bottles = 900): LoggedRun => ({
  floor: 'LARKMOOR',
  from: at(0),
  to: at(60),
  bottles,
  ...(stops === undefined ? {} : { stops }),
});
const bound = (...runs: LoggedRun[]) => bindShift(demoBook, larkmoor, undefined, { runs });

describe('stops that were logged in runs', () => {
  it('weigh against one that is declared, by hand: 900 bottles under the head, three stops of 1, 2 and 3 min', () => {
    const { line, log, stops } = bound(
      run([stop('STOP-CAP', 5, 1), stop('cap across in the chute', 20, 2), stop(' stop-cap', 40, 3)]),
    );
    const seconds = line!.closing!.perBottle as number;
    const found = line!.closing!.stops!.find(({ cause }) => cause === 'STOP-CAP')!;
    // one head: it works the seconds of a bottle for each of 900
    expect(line!.closing!.heads).toBe(1);
    expect(seconds).toBe(2.4);
    expect(log!.causes).toHaveLength(1);
    const [met] = log!.causes;
    expect(met!.between).toBeCloseTo(720, 9);
    expect(met!.clear).toBeCloseTo(120, 9);
    // one in 75 min that takes 1 min is declared: four in 6660 s, and 7 min to clear them
    expect(found.between).toBeCloseTo(1665, 9);
    expect(found.clear).toBeCloseTo(105, 9);
    expect(met!.taken).toEqual({ between: found.between, clear: found.clear });
    // NIST/SEMATECH e-Handbook 8.4.5.1, table of factors for 95 %: 3 failures, time-censored, 0.3422 and 4.8491 (memory)
    expect(met!.low / met!.between).toBeCloseTo(0.3422, 3);
    expect(met!.high / met!.between).toBeCloseTo(4.8491, 3);
    expect(stops).toBe('partly');
    expect(log!.unseen).toContain('STOP-HOPPER');
  });

  it('by the clock come in the time less their own: two of 5 min in 60 min are 25 min apart, three in 230 with the declared one', () => {
    const { line } = bound(run([stop('-S2', 10, 5), stop('-S2', 40, 5)]));
    const guard = line!.lineStops.find(({ cause }) => cause === '-S2')!;
    // declared: one in 3 h, and 90 s
    expect(guard.between).toBeCloseTo((10_800 + 2 * 1500) / 3, 9);
    expect(guard.clear).toBeCloseTo((90 + 600) / 3, 9);
    // none in an hour: it takes the hour longer
    const other = line!.lineStops.find(({ cause }) => cause === '-S1')!;
    expect(other.between).toBeCloseTo(41 * 3600, 9);
    expect(other.clear).toBeCloseTo(360, 9);
  });

  it('count as far as they lie in their run, and are left out by name where the book knows them not', () => {
    const { line, log } = bound(run([stop('-S2', 58, 10), stop('label roll', 1, 2)]));
    expect(line!.lineStops.find(({ cause }) => cause === '-S2')!.clear).toBeCloseTo((90 + 120) / 2, 9);
    expect(log!.unknown).toEqual([{ cause: 'label roll', stops: 1, seconds: 120 }]);
  });

  it('leave a floor as declared of which no run says what stood, or runs of another floor or format alone', () => {
    const declared = bindShift(demoBook, larkmoor);
    for (const other of [run(), { ...run([]), floor: 'OXBOW' }, { ...run([]), format: 'JUG' }]) {
      const { line, log, stops } = bound(other);
      expect(log).toBeUndefined();
      expect(stops).toBe('declared');
      expect(line).toEqual(declared.line);
    }
  });

  it('give back the times of a line whose shifts are written down as a log', () => {
    // what the line of the book does in 40 shifts, as somebody beside it would write it down
    const { line } = bindShift(demoBook, larkmoor);
    const shifts = 40;
    const figures = shiftFigures(line!, runShifts(line!, { seed: 7, first: 0, shifts }));
    const bottles = shifts * (figures.good.mean + figures.rejected.mean);
    const hours = (shifts * line!.duration) / 3600;
    let minute = 0;
    const stops = figures.causes.flatMap(({ cause, strikes, stood }) =>
      Array.from({ length: Math.round(strikes.mean * shifts) }, () => {
        const minutes = stood.mean / strikes.mean / 60;
        minute += minutes;
        return stop(cause, minute - minutes, minutes);
      }),
    );
    const whole: LoggedRun = { ...run(stops, bottles), to: at(60 * hours) };
    const again = bound(whole);
    const all = [line!, again.line!].map((each) =>
      [each.washer, each.discharge, each.fill, each.closing, each.closing?.chute]
        .flatMap((station) => station?.stops ?? [])
        .concat(each.lineStops),
    );
    for (const [i, told] of all[0]!.entries()) {
      const met = again.log!.causes.find(({ cause }) => cause === told.cause);
      if (met === undefined) continue;
      const found = all[1]![i]!;
      // four standard deviations of a mean of so many exponential times
      const off = 4 / Math.sqrt(met.stops);
      expect(Math.abs(Math.log(found.between / told.between))).toBeLessThan(off + 0.02);
      if (told.pattern === undefined)
        expect(Math.abs(Math.log(found.clear / told.clear))).toBeLessThan(off + 0.02);
    }
    expect(again.log!.causes.length).toBeGreaterThan(8);
  });
});
