import type { Envelope } from '../../record/envelope.ts';

/** The records of a book as far as a page knows them. */
export interface KnownRecords {
  readonly records: readonly Envelope[];
  /** How many of them, from the first, stand as the server gave them; behind them is what this page added since. */
  readonly settled: number;
  /** Where the server's answer ended: the next is asked for what came behind it. */
  readonly position: number;
  /** Where they begin: what came before is asked for there; 0 once nothing did. */
  readonly begins: number;
  /** Records that the book had when the server was asked first. */
  readonly total: number;
}

export const noRecords: KnownRecords = { records: [], settled: 0, position: 0, begins: 0, total: 0 };

/**
 * What is known once the server has told what stands before it.
 *
 * Symbols  answer  records that end where the known ones begin; the newest of all where nothing is known yet
 */
export const readBefore = (
  after: KnownRecords | undefined,
  answer: {
    readonly records: readonly Envelope[];
    readonly begins: number;
    readonly position: number;
    readonly total: number;
  },
): KnownRecords => {
  const { records, begins, position, total } = answer;
  if (after === undefined) return { records, settled: records.length, position, begins, total };
  const there = new Set(records.map(({ id }) => id));
  const settled = [...records, ...after.records.slice(0, after.settled)];
  const added = after.records.slice(after.settled).filter(({ id }) => !there.has(id));
  return { ...after, records: [...settled, ...added], settled: settled.length, begins };
};

/**
 * What is known once the server has told what came behind a position.
 *
 * Assumes  the server's order never changes, so that two answers on their way at once may come in either order
 * Cost     O(n); the same list where nothing new came, so that nothing is worked out anew
 */
export const readOn = (
  before: KnownRecords,
  answer: { readonly records: readonly Envelope[]; readonly position: number },
): KnownRecords => {
  // an answer that was asked for later has been here
  if (answer.position <= before.position) return before;
  const settled = before.records.slice(0, before.settled);
  const there = new Set(settled.map(({ id }) => id));
  settled.push(...answer.records.filter(({ id }) => !there.has(id)));
  for (const { id } of settled) there.add(id);
  const records = [...settled, ...before.records.slice(before.settled).filter(({ id }) => !there.has(id))];
  const same =
    records.length === before.records.length && records.every(({ id }, at) => id === before.records[at]?.id);
  return {
    ...before,
    records: same ? before.records : records,
    settled: settled.length,
    position: answer.position,
  };
};

/** What is known once the server has acknowledged records; those that came from others meanwhile stay. */
export const withAdded = (before: KnownRecords, all: readonly Envelope[]): KnownRecords => {
  const there = new Set(before.records.map(({ id }) => id));
  const added = all.filter(({ id }) => !there.has(id));
  return added.length === 0 ? before : { ...before, records: [...before.records, ...added] };
};
