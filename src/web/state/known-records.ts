import type { Envelope } from '../../record/envelope.ts';
import { nothingStands, type Standing, standOn } from '../../record/standing.ts';

/** What a page knows of the records of a book: what counts of them. */
export interface KnownRecords {
  readonly standing: Standing;
  /** Where the server's answer ended: the next is asked for what came behind it. */
  readonly position: number;
}

export const noRecords: KnownRecords = { standing: nothingStands, position: 0 };

/** Of records those that go on in the chains, each directly behind the one before it: what is known already is left out. */
const goingOn = (ends: Standing['ends'], records: readonly Envelope[]): readonly Envelope[] => {
  const last = new Map([...ends.values()].map(({ writer, sequence }) => [writer, sequence]));
  return records.filter(({ writer, sequence }) => {
    const isNext = sequence === (last.get(writer) ?? -1) + 1;
    if (isNext) last.set(writer, sequence);
    return isNext;
  });
};

/**
 * What is known once records of the server are, be it that it acknowledged them or that it told them.
 *
 * Method   a chain has no gaps: a record that does not follow what is known of it is known, or is left to the next answer
 * Symbols  records   in order within each chain
 *          position  where the answer ended; absent, they are no answer of what came behind one
 * Cost     O(what counts + records); the same where nothing new came, so that nothing is worked out anew
 */
export const knownWith = (
  before: KnownRecords,
  records: readonly Envelope[],
  position = before.position,
): KnownRecords => {
  const fresh = goingOn(before.standing.ends, records);
  if (fresh.length === 0 && position <= before.position) return before;
  return { standing: standOn(before.standing, fresh), position: Math.max(before.position, position) };
};
