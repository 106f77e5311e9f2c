import type { Problem, Result } from '../quantity/problem.ts';
import { type Envelope, type Head, ORIGIN } from './envelope.ts';
import { hashRecord } from './hash-record.ts';
import { headDiffers, headMissing } from './head-problems.ts';
import { recordProblem } from './problems.ts';

/** Records of a writer behind a place of its chain, a handful at a time; none where it ends. */
export type ReadOnward = (writer: string, behind: number) => Promise<Result<readonly Envelope[]>>;

/** A record against its own hash and the one that must stand before it. */
const linkProblems = (before: Head | undefined, record: Envelope): readonly Problem[] => {
  const { writer, sequence } = record;
  const path = `/records/${writer}/${sequence}`;
  const next = (before?.sequence ?? -1) + 1;
  const own = hashRecord(record);
  if (!own.ok) return own.problems;
  if (own.value !== record.hash) {
    const rest = { given: record.hash, allowed: own.value, parts: { writer, sequence } };
    return [recordProblem('RECORD_CHANGED', `${path}/hash`, rest)];
  }
  if (sequence !== next) {
    return [recordProblem('RECORD_DROPPED', path, { parts: { writer, first: next, last: sequence - 1 } })];
  }
  const link = before?.hash ?? ORIGIN;
  if (record.previous === link) return [];
  const rest = { given: record.previous, allowed: [link], parts: { writer, sequence } };
  return [recordProblem('RECORD_CHAIN_BROKEN', `${path}/previous`, rest)];
};

/** One chain up to the last of its heads. */
const chainHeld = async (
  readOnward: ReadOnward,
  writer: string,
  heads: readonly Head[],
): Promise<readonly Problem[]> => {
  let before: Head | undefined;
  let left = heads;
  while (left.length > 0) {
    const page = await readOnward(writer, before?.sequence ?? -1);
    if (!page.ok) return page.problems;
    if (page.value.length === 0) return left.map((head) => headMissing(head, before?.sequence));
    for (const record of page.value) {
      const broken = linkProblems(before, record);
      // what follows a break hangs in the air
      if (broken.length > 0) return broken;
      const { book, sequence, hash } = record;
      before = { book, writer, sequence, hash };
      const differs = left.filter((head) => head.sequence === sequence && head.hash !== hash);
      if (differs.length > 0) {
        return differs.map((head) => headDiffers(head, hash));
      }
      left = left.filter((head) => head.sequence > sequence);
      if (left.length === 0) return [];
    }
  }
  return [];
};

/**
 * Whether what was handed over before is still there as it was, of a set of records that is too large to be held at once.
 *
 * Method   each chain from its first record to the last head of it: own hash, place, link, then the head
 * Symbols  readOnward  reads a chain on;  book, heads  those that came by another way
 * Returns  the first break of each chain; none means that everything up to the heads is as it was
 * Problems RECORD_CHANGED, RECORD_DROPPED, RECORD_CHAIN_BROKEN, RECORD_HEAD_DIFFERS, RECORD_TRUNCATED,
 *          RECORD_WRITER_MISSING, RECORD_HEAD_OF_OTHER_BOOK, those of the reading
 * Assumes  ids and supersession were held when the records were taken in; verifyRecords holds them again
 * Cost     O(records up to the heads), memory of what is read at once
 * Source   hash chain, see hashRecord
 */
export const headsHeld = async (
  readOnward: ReadOnward,
  book: string,
  heads: readonly Head[],
): Promise<readonly Problem[]> => {
  const strange = heads.filter((head) => head.book !== book);
  const problems: Problem[] = strange.map(({ writer, book: given }) =>
    recordProblem('RECORD_HEAD_OF_OTHER_BOOK', `/heads/${writer}`, {
      given,
      allowed: book,
      parts: { writer },
    }),
  );
  const own = heads.filter((head) => head.book === book);
  for (const writer of new Set(own.map((head) => head.writer))) {
    const chain = own.filter((head) => head.writer === writer);
    problems.push(...(await chainHeld(readOnward, writer, chain)));
  }
  return problems;
};
