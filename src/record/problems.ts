import type { Problem } from '../quantity/problem.ts';

/** Every problem of records, with the parts beside `path` that its words want. */
export const recordProblems = {
  /** A value that JSON cannot hold: NaN, infinity, undefined, a date object, a function. */
  RECORD_NOT_JSON: ['given', 'allowed'],
  /** A text with half of a surrogate pair: no UTF-8 for it exists. */
  RECORD_TEXT_BROKEN: [],
  RECORD_TOO_DEEP: ['allowed'],
  RECORD_TOO_LARGE: ['given', 'allowed'],
  /** A member of the envelope is absent, unknown or of the wrong form. */
  RECORD_MALFORMED: ['allowed'],
  RECORD_KIND_UNKNOWN: ['given', 'allowed'],
  /** The body is not what its kind and version ask for. */
  RECORD_BODY: ['allowed'],
  RECORD_CHANGED: ['writer', 'sequence'],
  RECORD_DROPPED: ['writer', 'first', 'last'],
  RECORD_CHAIN_BROKEN: ['writer', 'sequence'],
  RECORD_REORDERED: ['writer', 'sequence'],
  RECORD_REPEATED: ['writer', 'sequence'],
  RECORD_FORK: ['writer', 'sequence'],
  RECORD_ID_TWICE: ['given'],
  RECORD_TRUNCATED: ['writer', 'last', 'head'],
  /** Records of a device were handed over before, and none of them is here. */
  RECORD_WRITER_MISSING: ['writer', 'head'],
  RECORD_HEAD_DIFFERS: ['writer', 'sequence'],
  RECORD_HEAD_OF_OTHER_BOOK: ['writer', 'given', 'allowed'],
  RECORD_WRONG_BOOK: ['given', 'allowed'],
  RECORD_SUPERSEDES_UNKNOWN: ['given'],
  RECORD_SUPERSEDES_CYCLE: ['given'],
  RECORD_SUPERSEDES_OTHER_KIND: ['given', 'allowed'],
  RECORD_SIGNATURE_WRONG: ['by'],
  /** Made with a key that is none of those that were expected. */
  RECORD_SIGNATURE_STRANGE: ['by', 'given'],
  RECORD_REPLY_UNREADABLE: ['allowed'],
  RECORD_REPLY_FROM_FUTURE: ['given', 'allowed'],
  RECORD_FILE_UNREADABLE: ['allowed'],
  RECORD_FILE_FROM_FUTURE: ['given', 'allowed'],
  RECORD_FILE_SHORT: ['given', 'allowed'],
  RECORD_LINE_UNREADABLE: ['line'],
  RECORD_LINE_NOT_CANONICAL: ['line'],
  /** Neither a list of what was asked for nor a file of records. */
  RECORD_LIST_UNREADABLE: ['allowed'],
} as const satisfies Record<string, readonly string[]>;

export type RecordProblemCode = keyof typeof recordProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const recordProblem = (
  code: RecordProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
