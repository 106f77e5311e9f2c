import type { Problem } from '../../quantity/problem.ts';

/** Why a floor of a book can't be run for a shift, beside what is wrong with the line itself; with what a sentence needs. */
export const floorShiftProblems = {
  /** Stations that wait for each other by their hold rules. */
  SHIFT_HOLDS_CIRCLE: ['rules', 'stations'],
  /** A station that waits while what it feeds is empty. */
  SHIFT_HOLD_EMPTY: ['rule', 'station', 'by'],
  /** A station after which none comes, and which is not the last. */
  SHIFT_ENDS_EARLY: ['station'],
  /** The line branches, and only one way is simulated. */
  SHIFT_BRANCHES: ['station'],
  /** Both sensors of a chute are one device. */
  SHIFT_ONE_SENSOR: ['given'],
  /** Lanes that never reach their counts. */
  SHIFT_FILL_NEVER_ENDS: ['lanes'],
  /** A change that names no place of the book. */
  SHIFT_CHANGE_SHAPE: ['given'],
} as const satisfies Record<string, readonly string[]>;

export type FloorShiftProblemCode = keyof typeof floorShiftProblems;

export const floorShiftProblem = (
  code: FloorShiftProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
