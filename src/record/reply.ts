import type { Problem, Result } from '../quantity/problem.ts';
import { bodyProblems } from './append-record.ts';
import { type Envelope, envelopeProblems, type Head } from './envelope.ts';
import { recordKinds } from './kinds.ts';
import { recordProblem } from './problems.ts';
import { type Signed, signedProblems, signFor } from './signed-body.ts';

/** What a witness says to one check. */
export interface ReplyComment {
  readonly check: string;
  readonly floor: string;
  readonly text: string;
}

/** How a witness takes what was shown. */
export const acceptances = ['as it is', 'with open points', 'not'] as const;
export type Acceptance = (typeof acceptances)[number];

/** What a witness who has read a witness file says to it. */
export interface ReplyStatement {
  readonly by: string;
  readonly role: string;
  readonly book: string;
  readonly revision: number;
  /** SHA-256 of what the file shows. */
  readonly file: string;
  /** Heads of all chains as the file states them. */
  readonly heads: readonly Head[];
  /** The witness's own clock: a claim. */
  readonly at: string;
  readonly accepted: Acceptance;
  readonly comments: readonly ReplyComment[];
  /** Points that stay open, each named. */
  readonly open: readonly string[];
  /** The gate that is passed by it, and on which floor. */
  readonly passes?: string;
  readonly floor?: string;
  /** What is said to the whole. */
  readonly remark?: string;
}

/** Body of a reply, version 1. */
export interface ReplyBody extends ReplyStatement, Signed {}

const purpose = 'twinfloor-reply-1';

/** What a witness says, with their signature. */
export const signReply = (statement: ReplyStatement, secretKey: string): Result<ReplyBody> =>
  signFor(purpose, statement, secretKey);

/** A reply record whose body is one. */
export type ReplyRecord = Envelope<ReplyBody>;

export const isReply = (value: unknown): value is ReplyRecord => {
  const { kind, version } = (value ?? {}) as Partial<Envelope>;
  return (
    kind === 'reply' &&
    version === 1 &&
    envelopeProblems(value, '').length === 0 &&
    bodyProblems(value as Envelope, recordKinds, '').length === 0
  );
};

/** What is wrong with a reply by itself. */
export const replyProblems = (
  record: Pick<ReplyRecord, 'body' | 'book'>,
  keys: readonly string[] | undefined,
  path: string,
): readonly Problem[] => {
  const { body, book } = record;
  const rest = { given: body.book, allowed: book };
  return [
    ...(body.book === book ? [] : [recordProblem('RECORD_WRONG_BOOK', `${path}/body/book`, rest)]),
    ...signedProblems(purpose, record, keys, path),
  ];
};
