import type { Problem } from '../../quantity/problem.ts';

/** Every reason why a line can't be run for a shift, with what its sentence needs beside the path. */
export const shiftProblems = {
  /** Stations that wait for each other by their hold rules. */
  SHIFT_HOLDS_CIRCLE: ['rules', 'stations'],
  /** Events that wait for each other. */
  SHIFT_DEADLOCK: ['events'],
  SHIFT_NO_WAY_OUT: ['station'],
  SHIFT_NO_ROOM: ['station'],
  /** Both sensors of a chute are one device. */
  SHIFT_CHUTE_ONE_SENSOR: ['given'],
  /** Lanes that never reach their counts. */
  SHIFT_FILL_NEVER_ENDS: ['lanes'],
  /** The line branches, and only one way is simulated. */
  SHIFT_BRANCHES: ['station'],
  /** What `--change` of the command line, or a field of the page, wants to put somewhere. */
  SHIFT_CHANGE_SHAPE: ['given'],
} as const satisfies Record<string, readonly string[]>;

export type ShiftProblemCode = keyof typeof shiftProblems;

export const shiftProblem = (
  code: ShiftProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
