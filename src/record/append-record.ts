import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { canonicalJson } from './canonical-json.ts';
import { type Envelope, envelopeProblems, type Head, ORIGIN } from './envelope.ts';
import { hashRecord } from './hash-record.ts';
import { findKind, type KindRegistry } from './kind-registry.ts';
import { recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';

/** Where a writer's chain stands: what the next record needs to know of those before it. */
export interface Chain {
  readonly book: string;
  readonly writer: string;
  /** How many records it has, which is the sequence of the next. */
  readonly length: number;
  /** Hash of the last record, or 64 zeros. */
  readonly hash: string;
}

/** What the writer says; the chain adds the rest. */
export interface Draft {
  readonly id: string;
  readonly revision: number;
  readonly kind: string;
  readonly version: number;
  readonly deviceTime: string;
  readonly supersedes?: string;
  readonly body: unknown;
}

/** A record with its pictures elsewhere is small; a larger one is a mistake. In bytes of canonical JSON. */
export const LARGEST_BODY = 1_048_576;

export const startChain = (book: string, writer: string): Chain => ({
  book,
  writer,
  length: 0,
  hash: ORIGIN,
});

export const chainFrom = (head: Head): Chain => ({
  book: head.book,
  writer: head.writer,
  length: head.sequence + 1,
  hash: head.hash,
});

/** What is wrong with a body, by the kind that the registry holds for it. */
export const bodyProblems = (
  record: Pick<Envelope, 'kind' | 'version' | 'body'>,
  kinds: KindRegistry,
  path: string,
): readonly Problem[] => {
  const kind = findKind(kinds, record.kind, record.version);
  if (kind) return kind.body(record.body, `${path}/body`);
  const given = `${record.kind} (version ${record.version})`;
  return [recordProblem('RECORD_KIND_UNKNOWN', `${path}/kind`, { given, allowed: [...kinds.keys()] })];
};

/**
 * The next record of a writer's chain, and the chain after it.
 *
 * Method   sequence = length, previous = hash of the last; hash by hashRecord; nothing given is changed
 * Symbols  chain  where the chain stands;  draft  what the writer says;  kinds  the kinds known
 * Returns  record with a body of its own (no later change of the draft reaches it), chain
 * Problems RECORD_NOT_JSON, RECORD_TEXT_BROKEN, RECORD_TOO_DEEP, RECORD_TOO_LARGE, RECORD_MALFORMED,
 *          RECORD_KIND_UNKNOWN, RECORD_BODY
 * Assumes  one process at a time writes as this writer; two of them make a fork, which verifyRecords finds
 * Cost     O(n) in the size of the body
 * Source   hash chain, see hashRecord
 */
export const appendRecord = (
  chain: Chain,
  draft: Draft,
  kinds: KindRegistry = recordKinds,
): Result<{ readonly record: Envelope; readonly chain: Chain }> => {
  const body = canonicalJson(draft.body, '/body');
  if (!body.ok) return body;
  const size = new TextEncoder().encode(body.value).length;
  if (size > LARGEST_BODY) {
    return refuse(recordProblem('RECORD_TOO_LARGE', '/body', { given: size, allowed: String(LARGEST_BODY) }));
  }
  const unhashed = {
    id: draft.id,
    book: chain.book,
    revision: draft.revision,
    kind: draft.kind,
    version: draft.version,
    writer: chain.writer,
    sequence: chain.length,
    deviceTime: draft.deviceTime,
    ...(draft.supersedes === undefined ? {} : { supersedes: draft.supersedes }),
    body: JSON.parse(body.value) as unknown,
    previous: chain.hash,
  };
  const problems = [
    // ORIGIN only stands in for the hash that is not known yet
    ...envelopeProblems({ ...unhashed, hash: ORIGIN }, ''),
    ...bodyProblems(unhashed, kinds, ''),
  ];
  if (draft.supersedes !== undefined && draft.supersedes === draft.id) {
    problems.push(recordProblem('RECORD_SUPERSEDES_CYCLE', '/supersedes', { given: draft.id }));
  }
  if (problems.length > 0) return refuse(...problems);
  const hash = hashRecord(unhashed);
  if (!hash.ok) return hash;
  const record: Envelope = { ...unhashed, hash: hash.value };
  return accept({ record, chain: { ...chain, length: chain.length + 1, hash: hash.value } });
};
