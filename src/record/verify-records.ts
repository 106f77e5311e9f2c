import type { Problem } from '../quantity/problem.ts';
import { bodyProblems } from './append-record.ts';
import { type Envelope, envelopeProblems, type Head, ORIGIN } from './envelope.ts';
import { hashRecord } from './hash-record.ts';
import { headDiffers, headMissing } from './head-problems.ts';
import type { KindRegistry } from './kind-registry.ts';
import { recordProblem } from './problems.ts';
import { supersessionProblems } from './supersession.ts';

/** What the records are held against beside themselves. */
export interface Expected {
  /** The book they must belong to; left out, that of the heads, else of the first record. */
  readonly book?: string;
  /** Heads that were exported or signed before: only they show that an end was cut off. */
  readonly heads?: readonly Head[];
  /** Given, each body is held against its kind; a kind that this version does not know is then a problem. */
  readonly kinds?: KindRegistry;
}

interface Placed {
  readonly record: Envelope;
  readonly path: string;
}

const at = ({ record }: Placed) => ({ writer: record.writer, sequence: record.sequence });

/** One writer's records: order in the set, forks, gaps, links. */
const chainProblems = (placed: readonly Placed[]): readonly Problem[] => {
  const problems: Problem[] = [];
  const bySequence = new Map<number, Placed[]>();
  let highest = -1;
  for (const one of placed) {
    const { sequence, hash } = one.record;
    const same = bySequence.get(sequence);
    if (same?.some((other) => other.record.hash === hash)) {
      problems.push(recordProblem('RECORD_REPEATED', one.path, { parts: at(one) }));
      continue;
    }
    if (same) {
      problems.push(recordProblem('RECORD_FORK', `${one.path}/sequence`, { given: hash, parts: at(one) }));
      same.push(one);
    } else {
      bySequence.set(sequence, [one]);
    }
    if (sequence < highest) problems.push(recordProblem('RECORD_REORDERED', one.path, { parts: at(one) }));
    highest = Math.max(highest, sequence);
  }

  let before: readonly Placed[] = [];
  let next = 0;
  for (const sequence of [...bySequence.keys()].sort((a, b) => a - b)) {
    const here = bySequence.get(sequence) ?? [];
    const writer = here[0]?.record.writer ?? '';
    if (sequence > next) {
      const parts = { writer, first: next, last: sequence - 1 };
      problems.push(recordProblem('RECORD_DROPPED', here[0]?.path ?? '', { parts }));
    } else {
      const links = sequence === 0 ? [ORIGIN] : before.map((one) => one.record.hash);
      for (const one of here) {
        if (!links.includes(one.record.previous)) {
          const rest = { given: one.record.previous, allowed: links, parts: at(one) };
          problems.push(recordProblem('RECORD_CHAIN_BROKEN', `${one.path}/previous`, rest));
        }
      }
    }
    before = here;
    next = sequence + 1;
  }
  return problems;
};

/** Each head that was handed over must still be there, as it was. */
const headProblems = (
  writers: ReadonlyMap<string, readonly Placed[]>,
  heads: readonly Head[],
): readonly Problem[] =>
  heads.flatMap((head) => {
    const placed = writers.get(head.writer) ?? [];
    const found = placed.filter((one) => one.record.sequence === head.sequence);
    if (found.some((one) => one.record.hash === head.hash)) return [];
    const last = placed.reduce((most, one) => Math.max(most, one.record.sequence), -1);
    if (last < head.sequence) return [headMissing(head, last < 0 ? undefined : last)];
    return [headDiffers(head, found[0]?.record.hash ?? null)];
  });

const idProblems = (placed: readonly Placed[]): readonly Problem[] => {
  const byId = new Map<string, string>();
  return placed.flatMap(({ record, path }) => {
    const known = byId.get(record.id);
    if (known === undefined) byId.set(record.id, record.hash);
    return known === undefined || known === record.hash
      ? []
      : [recordProblem('RECORD_ID_TWICE', `${path}/id`, { given: record.id })];
  });
};

/**
 * Every break in a set of records, all at once; an empty list means whole.
 *
 * Method   each record against its own hash; each writer's chain for order, gaps, forks and links; every
 *          head that was handed over before; ids, books and supersession across writers
 * Symbols  records   the set, in any order between writers, in order within each
 *          expected  book, heads, kinds
 * Returns  problems, each with the path `/records/<place in the set>` or `/heads/<writer>`
 * Problems RECORD_MALFORMED, RECORD_CHANGED, RECORD_DROPPED, RECORD_CHAIN_BROKEN, RECORD_REORDERED,
 *          RECORD_REPEATED, RECORD_FORK, RECORD_ID_TWICE, RECORD_TRUNCATED, RECORD_WRITER_MISSING,
 *          RECORD_HEAD_DIFFERS, RECORD_HEAD_OF_OTHER_BOOK,
 *          RECORD_WRONG_BOOK, RECORD_SUPERSEDES_*, with kinds also RECORD_KIND_UNKNOWN and RECORD_BODY
 * Assumes  the heads come by another way than the records: without them a cut end, or a chain that its
 *          writer computed anew from the first record, looks whole
 * Cost     O(n log n) in the records, O(n) in their bytes
 * Source   hash chain, see hashRecord
 */
export const verifyRecords = (records: readonly unknown[], expected: Expected = {}): readonly Problem[] => {
  const problems: Problem[] = [];
  const placed: Placed[] = [];
  const heads = expected.heads ?? [];
  records.forEach((value, i) => {
    const path = `/records/${i}`;
    const malformed = envelopeProblems(value, path);
    if (malformed.length > 0) problems.push(...malformed);
    else placed.push({ record: value as Envelope, path });
  });

  const book = expected.book ?? heads[0]?.book ?? placed[0]?.record.book;
  const writers = new Map<string, Placed[]>();
  for (const one of placed) {
    const { record, path } = one;
    if (record.book !== book) {
      const rest = { given: record.book, allowed: String(book) };
      problems.push(recordProblem('RECORD_WRONG_BOOK', `${path}/book`, rest));
    }
    const hash = hashRecord(record);
    if (!hash.ok) {
      problems.push(...hash.problems.map((problem) => ({ ...problem, path: `${path}${problem.path}` })));
    } else if (hash.value !== record.hash) {
      const rest = { given: record.hash, allowed: hash.value, parts: at(one) };
      problems.push(recordProblem('RECORD_CHANGED', `${path}/hash`, rest));
    }
    if (expected.kinds) problems.push(...bodyProblems(record, expected.kinds, path));
    const chain = writers.get(record.writer);
    if (chain) chain.push(one);
    else writers.set(record.writer, [one]);
  }

  for (const chain of writers.values()) problems.push(...chainProblems(chain));
  for (const { writer, book: given } of heads.filter((head) => head.book !== book)) {
    const rest = { given, allowed: String(book), parts: { writer } };
    problems.push(recordProblem('RECORD_HEAD_OF_OTHER_BOOK', `/heads/${writer}`, rest));
  }
  problems.push(
    ...headProblems(
      writers,
      heads.filter((head) => head.book === book),
    ),
    ...idProblems(placed),
    ...supersessionProblems(
      placed.map((one) => one.record),
      placed.map((one) => one.path),
    ),
  );
  return problems;
};
