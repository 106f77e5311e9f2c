import type { Envelope, Head } from './envelope.ts';
import { byText } from './heads.ts';

/** The end of a device's chain, and the latest moment that it has claimed so far: no clock turns a chain round. */
export interface ChainEnd extends Head {
  /** ms since 1970. */
  readonly moment: number;
  /** That moment as it was written. */
  readonly claimed: string;
}

/** A device whose clock went back between two records of its chain: at which of the two it was wrong is not known. */
export interface ClockDoubt {
  readonly record: string;
  readonly writer: string;
  readonly given: string;
  readonly before: string;
}

/** When records were written, as far as their devices and their chains can tell. */
export interface Clocked {
  /** ms since 1970, by id. */
  readonly moments: ReadonlyMap<string, number>;
  /** By writer. */
  readonly ends: ReadonlyMap<string, ChainEnd>;
  readonly doubts: readonly ClockDoubt[];
}

/** A clock that is put right by less than this is no matter to anybody: ms. */
const usualCorrection = 3_600_000;

/** Where a chain ends once it has gone on by a record, and what its clock gives to doubt. */
export const chainAfter = (
  before: ChainEnd | undefined,
  { id, book, writer, sequence, hash, deviceTime }: Envelope,
): { readonly end: ChainEnd; readonly doubt?: ClockDoubt } => {
  const own = Date.parse(deviceTime);
  const head = { book, writer, sequence, hash };
  if (before === undefined || own >= before.moment) {
    return { end: { ...head, moment: own, claimed: deviceTime } };
  }
  const { moment, claimed } = before;
  const end = { ...head, moment, claimed };
  return moment - own > usualCorrection
    ? { end, doubt: { record: id, writer, given: deviceTime, before: claimed } }
    : { end };
};

/** Each device's records as it wrote them. */
const inChains = (records: readonly Envelope[]): readonly Envelope[] => {
  const last = new Map<string, number>();
  const isInOrder = records.every(({ writer, sequence }) => {
    const before = last.get(writer) ?? -1;
    last.set(writer, sequence);
    return sequence >= before;
  });
  return isInOrder ? records : records.toSorted((a, b) => a.sequence - b.sequence);
};

const notBegun: Clocked = { moments: new Map(), ends: new Map(), doubts: [] };

/**
 * The moments of records once more of them have come.
 *
 * Method   within a chain no record is earlier than the one before it: a claimed moment counts from the latest so far
 * Symbols  more  records behind those before, in each chain;  before  absent, none
 * Returns  a doubt for each record whose device's clock went back by more than an hour
 * Assumes  across devices the clocks are believed
 * Cost     O(n) where each device's records stand as it wrote them, else O(n log n)
 */
export const clockOn = (more: readonly Envelope[], before: Clocked = notBegun): Clocked => {
  const ends = new Map(before.ends);
  const moments = new Map(before.moments);
  const doubts = [...before.doubts];
  for (const record of inChains(more)) {
    const { end, doubt } = chainAfter(ends.get(record.writer), record);
    ends.set(record.writer, end);
    moments.set(record.id, end.moment);
    if (doubt !== undefined) doubts.push(doubt);
  }
  return { moments, ends, doubts };
};

/** The last record of each device, by writer. */
export const headsOfEnds = (ends: Clocked['ends']): readonly Head[] =>
  [...ends.values()]
    .map(({ book, writer, sequence, hash }) => ({ book, writer, sequence, hash }))
    .sort((a, b) => byText(a.writer, b.writer));
