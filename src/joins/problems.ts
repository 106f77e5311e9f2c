import type { Problem } from '../quantity/problem.ts';

/** Every problem of a list that should become joins, and of records of joins, with the parts that its words want. */
export const joinProblems = {
  /** No row of the list has headings that are known, or none of an end. */
  JOIN_LIST_NO_HEADER: ['allowed'],
  JOIN_LIST_NO_ROWS: [],
  JOIN_LIST_TAB_UNKNOWN: ['given', 'allowed'],
  /** The file holds a program; only its cells were read. Said beside what was read. */
  JOIN_LIST_MACROS: [],
  /** The file does not say how its letters are written; how they were taken is said beside what was read. */
  JOIN_LIST_ENCODING: ['given'],
  JOIN_ROW_NO_END: ['row'],
  /** Nothing says what it is. */
  JOIN_ROW_NO_KIND: ['row', 'allowed'],
  JOIN_ROW_KIND: ['row', 'given', 'allowed'],
  JOIN_ROW_TAG_TWICE: ['row', 'given', 'first'],
  /** The tag stands on something else than a join. */
  JOIN_ROW_TAG_TAKEN: ['row', 'given'],
  /** A formula that was never worked out, or one that ended in an error. */
  JOIN_ROW_FORMULA: ['row', 'given', 'column'],
  JOIN_ROW_QUANTITY: ['row', 'given', 'column'],
  /** A section or split that the book does not have. */
  JOIN_ROW_PLACE: ['row', 'given', 'allowed'],
  JOIN_ROW_TOO_LONG: ['row', 'column', 'allowed'],
  /** A file that should say what headings stand for. */
  JOIN_COLUMNS_UNREADABLE: ['allowed'],
  /** Records of a join that the book does not have. */
  JOIN_UNKNOWN: ['given'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type JoinProblemCode = keyof typeof joinProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const joinProblem = (
  code: JoinProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
