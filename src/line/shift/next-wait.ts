import type { StationMoment } from './shift-moment.ts';
import type { ShiftTrace } from './trace-shift.ts';

/** Number of the period that holds a moment, of periods without a gap; the last where it is later. */
export const periodAt = (periods: readonly StationMoment[], at: number): number => {
  let [low, high] = [0, periods.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (periods[middle]!.until > at) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** Next wait or stop of any station that begins after a moment and lasts longer than so many seconds. */
export const nextWait = (trace: ShiftTrace, after: number, longerThan = 0): StationMoment | undefined => {
  let found: StationMoment | undefined;
  for (const { of } of trace.periods) {
    for (let i = periodAt(of, after); i < of.length; i++) {
      const period = of[i]!;
      if (period.since >= trace.end || (found !== undefined && period.since >= found.since)) break;
      if (period.since <= after || period.state === 'running') continue;
      if (period.until - period.since > longerThan) {
        found = period;
        break;
      }
    }
  }
  return found;
};
