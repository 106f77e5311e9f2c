import type { Problem } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import { byText } from '../record/heads.ts';
import { proofProblem } from './problems.ts';

/** When each record was written, as far as its device and its chain can tell. */
export interface ClaimedMoments {
  /** Earlier before later, of equal ones by id. */
  readonly inOrder: (a: { readonly id: string }, b: { readonly id: string }) => number;
  /** Devices whose clock went back between two records of one chain: which of the two it was wrong at is not known. */
  readonly doubts: readonly Problem[];
}

/** A clock that is put right by less than this is no matter to anybody: s. */
const usualCorrection = 3600;

/**
 * The order of records by the moments that their devices claim, where no clock can turn a chain round.
 *
 * Method   within a chain no record is earlier than the one before it: a claimed moment counts from the latest so far
 * Symbols  records  the set, whole by verifyRecords
 * Returns  the order; a doubt for each chain whose clock went back by more than an hour
 * Assumes  across devices the clocks are believed
 * Cost     O(n log n)
 */
export const claimedMoments = (records: readonly Envelope[]): ClaimedMoments => {
  const moments = new Map<string, number>();
  const latest = new Map<string, { readonly at: number; readonly record: Envelope }>();
  const doubts: Problem[] = [];
  for (const record of records.toSorted((a, b) => a.sequence - b.sequence)) {
    const { id, writer, deviceTime } = record;
    const own = Date.parse(deviceTime);
    const before = latest.get(writer);
    if (before !== undefined && before.at - own > usualCorrection * 1000) {
      doubts.push(
        proofProblem('PROOF_CLOCK_BACK', `/records/${id}/deviceTime`, {
          given: deviceTime,
          parts: { writer, before: before.record.deviceTime },
        }),
      );
    }
    const at = Math.max(own, before?.at ?? own);
    moments.set(id, at);
    latest.set(writer, { at, record: before !== undefined && before.at > own ? before.record : record });
  }
  return {
    inOrder: (a, b) => (moments.get(a.id) ?? 0) - (moments.get(b.id) ?? 0) || byText(a.id, b.id),
    doubts,
  };
};
