import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';
import { proofProblem } from './problems.ts';

/** When each record was written, as far as its device and its chain can tell. */
export interface ClaimedMoments {
  /** Earlier before later, of equal ones by id. */
  readonly sorted: <T extends { readonly id: string }>(some: readonly T[]) => readonly T[];
  /** Devices whose clock went back between two records of one chain: which of the two it was wrong at is not known. */
  readonly doubts: readonly Problem[];
}

/** A clock that is put right by less than this is no matter to anybody: s. */
const usualCorrection = 3600;

/** The records of each device as it wrote them. */
const chainsOf = (records: readonly Envelope[]): readonly (readonly Envelope[])[] => {
  const chains = new Map<string, Envelope[]>();
  for (const record of records) {
    const chain = chains.get(record.writer);
    if (chain === undefined) chains.set(record.writer, [record]);
    else chain.push(record);
  }
  return [...chains.values()].map((chain) => chain.sort((a, b) => a.sequence - b.sequence));
};

/**
 * The order of records by the moments that their devices claim, where no clock can turn a chain round.
 *
 * Method   within a chain no record is earlier than the one before it: a claimed moment counts from the latest so far
 * Symbols  records  the set, whole by verifyRecords
 * Returns  what sorts by it; a doubt for each chain whose clock went back by more than an hour
 * Assumes  across devices the clocks are believed
 * Cost     O(n) where each device's records stand as it wrote them, else O(n log n)
 */
export const claimedMoments = (records: readonly Envelope[]): ClaimedMoments => {
  const moments = new Map<string, number>();
  const doubts: Problem[] = [];
  for (const chain of chainsOf(records)) {
    let latest = chain[0]!;
    let at = Date.parse(latest.deviceTime);
    for (const record of chain) {
      const { id, writer, deviceTime } = record;
      const own = Date.parse(deviceTime);
      if (at - own > usualCorrection * 1000) {
        doubts.push(
          proofProblem('PROOF_CLOCK_BACK', `/records/${id}/deviceTime`, {
            given: deviceTime,
            parts: { writer, before: latest.deviceTime },
          }),
        );
      }
      if (own >= at) {
        at = own;
        latest = record;
      }
      moments.set(id, at);
    }
  }
  return {
    sorted: (some) => {
      // looked up once for each, not at every comparison
      const at = some.map(({ id }) => moments.get(id) ?? 0);
      return some
        .map((_, i) => i)
        .sort((a, b) => at[a]! - at[b]! || byText(some[a]!.id, some[b]!.id))
        .map((i) => some[i]!);
    },
    doubts,
  };
};
