import type { Problem } from '../../quantity/problem.ts';

/** Every problem of recorded settings and of a sheet of them, with the parts beside `path` that its words want. */
export const settingProblems = {
  /** The register has no such row: the book has changed, or another was meant. */
  SETTING_UNKNOWN: ['given'],
  SETTING_FLOOR_UNKNOWN: ['given', 'allowed'],
  SETTING_NO_HEADER: [],
  /** A row that holds something and names no setting. */
  SETTING_NO_ID: ['given'],
  /** `rows` names them all. */
  SETTING_TWICE: ['rows'],
  /** The label of another setting: columns were sorted apart. */
  SETTING_TORN: ['given'],
  /** Nobody says who set it. */
  SETTING_NO_NAME: [],
} as const satisfies Record<string, readonly string[]>;

export type SettingProblemCode = keyof typeof settingProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const settingProblem = (
  code: SettingProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
