import type { Problem } from '../quantity/problem.ts';

/** Every problem of the store, with the parts beside `path` that its words want. */
export const storeProblems = {
  // refused: what was asked does not fit what is there
  STORE_CONFLICT: ['given', 'allowed'],
  STORE_RECORD_CONFLICT: ['given', 'allowed'],
  STORE_BOOK_EXISTS: ['given'],
  STORE_BOOK_UNKNOWN: ['given'],
  STORE_REVISION_UNKNOWN: ['given', 'allowed'],
  STORE_RECORD_GAP: ['given', 'allowed'],
  STORE_MEDIA_UNKNOWN: ['given'],
  /** The book has it, the folder beside the database has not. */
  STORE_MEDIA_GONE: ['given'],
  STORE_INPUT: ['allowed'],
  // failed: the disk, the file or another program
  STORE_READ_ONLY: [],
  STORE_FULL: [],
  STORE_BUSY: [],
  STORE_CORRUPT: [],
  STORE_FROM_FUTURE: ['given', 'allowed'],
  STORE_FOREIGN: [],
  STORE_NOT_DURABLE: ['given', 'allowed'],
  STORE_CANNOT_OPEN: [],
  STORE_CLOSED: [],
  STORE_FAILED: [],
} as const satisfies Record<string, readonly string[]>;

export type StoreProblemCode = keyof typeof storeProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const storeProblem = (
  code: StoreProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });

/** The world failed: nothing of the refused call was written, what was acknowledged before is as it was. */
export class StoreFailure extends Error {
  readonly problem: Problem;
  readonly code: StoreProblemCode;

  constructor(
    code: StoreProblemCode,
    path: string,
    cause?: unknown,
    rest: Omit<Problem, 'code' | 'path'> = {},
  ) {
    const said = cause instanceof Error ? `: ${cause.message}` : '';
    super(`${code} ${path}${said}`, { cause });
    this.name = 'StoreFailure';
    this.code = code;
    this.problem = storeProblem(code, path, rest);
  }
}
