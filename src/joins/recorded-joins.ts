import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { byMoment, unfollowed } from './unfollowed.ts';

export type RecordedState = 'parted' | 'made' | 'tested' | 'trouble';

/** What a record says of one join, as plain data. */
export interface RecordedJoin {
  /** Id of the record: a correction names it. */
  readonly id: string;
  readonly at: string;
  readonly writer: string;
  readonly join: string;
  readonly state: RecordedState;
  readonly by: string;
  readonly floor?: string;
  readonly reading?: string;
  readonly method?: string;
  readonly instrument?: string;
  readonly evidence?: readonly string[];
  readonly follows?: readonly string[];
  readonly remark?: string;
}

/** A join as its records have it. */
export interface JoinState {
  readonly join: string;
  /** What counts: of states that were written apart from each other the one that is farther from being done. */
  readonly state: RecordedState;
  /** Records that nothing follows; the next one names them. More than one: written apart from each other. */
  readonly last: readonly RecordedJoin[];
  /** Written apart and not the same: people decide which counts, by a record that follows both. */
  readonly conflict: boolean;
  /** Every record that no correction replaces, first to last. */
  readonly all: readonly RecordedJoin[];
}

/** From what hangs loose to what is done; trouble outweighs all. */
const rank: Readonly<Record<RecordedState, number>> = { trouble: 0, parted: 1, made: 2, tested: 3 };

const says = ({ state, reading, method }: RecordedJoin): string => JSON.stringify([state, reading, method]);

/**
 * The joins of a book as they stand by their records.
 *
 * Method   a record counts until another follows it; where two were written apart both stand, and what is farther from
 *          being done counts until somebody follows both
 * Symbols  records  the set, whole by verifyRecords
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n log n)
 */
export const joinStates = (records: readonly Envelope[]): ReadonlyMap<string, JoinState> => {
  const byJoin = new Map<string, RecordedJoin[]>();
  for (const { kind, version, id, deviceTime: at, writer, body } of currentRecords(records).current) {
    if (kind !== 'join' || version > 2) continue;
    const one: RecordedJoin = { ...(body as Omit<RecordedJoin, 'id' | 'at' | 'writer'>), id, at, writer };
    const known = byJoin.get(one.join);
    if (known === undefined) byJoin.set(one.join, [one]);
    else known.push(one);
  }
  return new Map(
    [...byJoin].map(([join, of]) => {
      const all = of.toSorted(byMoment);
      const last = unfollowed(all);
      const worst = last.reduce((least, one) => (rank[one.state] < rank[least.state] ? one : least));
      const conflict = new Set(last.map(says)).size > 1;
      return [join, { join, state: worst.state, last, conflict, all }];
    }),
  );
};
