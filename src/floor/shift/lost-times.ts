import type { LostStep, LostTime, Owner, StationState } from '../../line/shift/index.ts';

/** One way in which the line spends its shift; all of them add up to it. */
export interface LostRow {
  readonly state: StationState;
  /** Station that was waited for, or that stood. */
  readonly station: string;
  readonly cause?: string;
  /** Work that was waited for, where it was no stop. */
  readonly step?: LostStep;
  readonly owner: Owner;
  /** s, and its share of the shift */
  readonly seconds: number;
  readonly share: number;
  /** Number of the working of its share. */
  readonly working?: number;
}

/** What a mechanic tells apart: the line runs, a cause struck wherever it was felt, or a station did not keep up. */
const keyOf = ({ state, station, cause }: LostTime): string =>
  state === 'running' ? 'running' : cause === undefined ? `wait ${station}` : `cause ${cause}`;

/**
 * Where the minutes of a shift go: first what ran, then the longest.
 *
 * Method   the seconds of the line's core, those of one cause or of one station that was waited for taken together; the step
 *          of a wait is the longest of them
 */
export const lostRows = (minutes: readonly LostTime[], duration: number): readonly LostRow[] => {
  const rows = new Map<string, LostRow>();
  for (const time of [...minutes].sort((a, b) => b.seconds.mean - a.seconds.mean)) {
    const key = keyOf(time);
    const before = rows.get(key);
    const seconds = (before?.seconds ?? 0) + time.seconds.mean;
    const { state, station, owner, cause, step } = before ?? time;
    rows.set(key, {
      state,
      station,
      owner,
      seconds,
      share: seconds / duration,
      ...(cause === undefined ? {} : { cause }),
      ...(step === undefined || state === 'running' ? {} : { step }),
    });
  }
  return [...rows.values()].sort((a, b) => {
    if (a.state === 'running') return -1;
    return b.state === 'running' ? 1 : b.seconds - a.seconds;
  });
};

/**
 * Seconds of a shift by who answers for them.
 *
 * Method   stops by their owner; of the waits without a stop only those for people, supply or material: the machine's own
 *          pace is in the rate that it is set to
 */
export const timeByOwner = (minutes: readonly LostTime[]): Readonly<Record<Owner, number>> => {
  const sums = { machine: 0, supply: 0, people: 0, material: 0 };
  for (const { state, cause, owner, seconds } of minutes) {
    if (state === 'running' || (cause === undefined && owner === 'machine')) continue;
    sums[owner] += seconds.mean;
  }
  return sums;
};
