import type { Problem } from '../../quantity/problem.ts';

/** Every problem of trials, samples and lots against the book, and of sheets that hold them. */
export const fillProblems = {
  /** No row of headings was found. */
  FILL_NO_HEADINGS: ['allowed'],
  FILL_LANE_UNKNOWN: ['given', 'allowed'],
  FILL_FLOOR_UNKNOWN: ['given', 'allowed'],
  /** Neither the row nor the call says which floor. */
  FILL_FLOOR_MISSING: ['allowed'],
  FILL_FORMAT_UNKNOWN: ['given', 'allowed'],
  FILL_FORMAT_MISSING: ['allowed'],
  FILL_LANE_MISSING: ['allowed'],
  FILL_PRESET_MISSING: [],
  FILL_NOT_A_COUNT: ['given'],
  FILL_NOT_A_CHOICE: ['given', 'allowed'],
  FILL_MOMENT: ['given', 'allowed'],
  /** Thousands and decimals marked in a way that only one language reads. */
  FILL_NUMBER_MARKS: ['given'],
  /** One value of the whole lot stands there twice with different words. */
  FILL_LOT_DIFFERS: ['given', 'allowed'],
  FILL_GROSS_MISSING: [],
  /** The contents come out at nothing or less. */
  FILL_NET_NOT_POSITIVE: ['given', 'allowed'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type FillProblemCode = keyof typeof fillProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const fillProblem = (
  code: FillProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
