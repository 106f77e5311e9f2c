import type { LostTime, Owner, ShiftFigures, StationState } from '../../line/shift/index.ts';

/** One way in which a line spends its shift, on one floor: all of them add up to it. */
export interface LostRow {
  /** The same on every floor. */
  readonly key: string;
  readonly state: StationState;
  readonly station: string;
  readonly cause?: string;
  readonly owner: Owner;
  readonly seconds: number;
  /** What was waited for, the longest first. */
  readonly steps: readonly string[];
}

const keyOf = ({ state, station, cause }: LostTime): string =>
  state === 'running' ? state : `${state} ${cause ?? station}`;

/** Waits for the same station taken together: a mechanic looks at the machine, not at its steps. */
export const lostRows = (figures: Pick<ShiftFigures, 'minutes'>): readonly LostRow[] => {
  const rows = new Map<string, LostRow>();
  const byLength = figures.minutes.toSorted((a, b) => b.seconds.mean - a.seconds.mean);
  for (const time of byLength) {
    const key = keyOf(time);
    const before = rows.get(key);
    const step = time.step;
    rows.set(key, {
      key,
      state: time.state,
      station: time.station,
      owner: time.owner,
      ...(time.cause === undefined ? {} : { cause: time.cause }),
      seconds: (before?.seconds ?? 0) + time.seconds.mean,
      steps: [...(before?.steps ?? []), ...(step === undefined ? [] : [step])],
    });
  }
  return [...rows.values()].toSorted((a, b) =>
    // what runs stands first, at the spine
    a.state === 'running' ? -1 : b.state === 'running' ? 1 : b.seconds - a.seconds,
  );
};

/** A row below this share of the shift on every floor stands with the others of its size. */
export const smallShare = 0.002;

/** Keys of the rows that are worth a line of their own on some floor. */
export const toldKeys = (
  floors: readonly { readonly rows: readonly LostRow[]; readonly duration: number }[],
): readonly string[] => [
  ...new Set(
    floors.flatMap(({ rows, duration }) =>
      rows.filter(({ seconds }) => seconds >= smallShare * duration).map(({ key }) => key),
    ),
  ),
];

/** Seconds lost to each owner; what runs, and what a station takes by its own pace, is nobody's loss. */
export const ownersOf = (figures: Pick<ShiftFigures, 'minutes'>): Readonly<Record<Owner, number>> => {
  const sums = { machine: 0, supply: 0, people: 0, material: 0 };
  for (const { state, cause, owner, seconds } of figures.minutes) {
    if (state === 'running') continue;
    // what the machine's own pace holds back is in its set rate; a person who does not keep up is not
    if (cause !== undefined || owner !== 'machine') sums[owner] += seconds.mean;
  }
  return sums;
};
