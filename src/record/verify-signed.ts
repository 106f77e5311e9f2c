import type { Problem } from '../quantity/problem.ts';
import { isReply, replyProblems } from './reply.ts';
import { isSignature, signatureProblems } from './signature.ts';
import { type Expected, verifyRecords } from './verify-records.ts';

export interface ExpectedSigned extends Expected {
  /** Public keys that are known to be those of the people who sign; left out, any key passes. */
  readonly keys?: readonly string[];
}

/**
 * Every break in a set of records and in what was signed about it, all at once.
 *
 * Method   verifyRecords, with the heads that each signature and each reply names held against the records as those that
 *          were handed over; then each against its own key and, given keys, its key against them
 * Symbols  records   the set, in any order between writers, in order within each
 *          expected  book, heads, kinds, keys
 * Returns  problems
 * Problems those of verifyRecords, RECORD_SIGNATURE_WRONG, RECORD_SIGNATURE_STRANGE
 * Assumes  heads, or a copy of a signature, came by another way than the records: who may write the whole set anew
 *          may leave out the signatures too
 * Cost     that of verifyRecords and about a millisecond a signature
 * Source   hash chain, see hashRecord; RFC 8032
 */
export const verifySigned = (
  records: readonly unknown[],
  { keys, ...expected }: ExpectedSigned = {},
): readonly Problem[] => {
  const signatures = records.flatMap((record, i) =>
    isSignature(record) ? [{ record, path: `/records/${i}` }] : [],
  );
  const replies = records.flatMap((record, i) =>
    isReply(record) ? [{ record, path: `/records/${i}` }] : [],
  );
  const heads = [
    ...(expected.heads ?? []),
    ...[...signatures, ...replies].flatMap(({ record }) => record.body.heads),
  ];
  const book = expected.book ?? expected.heads?.[0]?.book;
  const whole = verifyRecords(records, { ...expected, heads, ...(book === undefined ? {} : { book }) });
  return [
    ...whole,
    ...signatures.flatMap(({ record, path }) => signatureProblems(record, keys, path)),
    ...replies.flatMap(({ record, path }) => replyProblems(record, keys, path)),
  ];
};
