import type { Envelope } from '../../record/envelope.ts';

/** The records of a book as far as a page knows them. */
export interface KnownRecords {
  readonly records: readonly Envelope[];
  /** How many of them, from the first, stand as the server gave them; behind them is what this page added since. */
  readonly settled: number;
  /** Where the server's answer ended: the next is asked for what came behind it. */
  readonly position: number;
}

export const noRecords: KnownRecords = { records: [], settled: 0, position: 0 };

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
