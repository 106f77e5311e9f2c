import type { Problem } from '../quantity/problem.ts';

/** Every problem of a picture, film, sound or document, with the parts beside `path` that its words want. */
export const mediaProblems = {
  MEDIA_EMPTY: [],
  MEDIA_TOO_LARGE: ['given', 'allowed'],
  /** Its first bytes are those of no form that is kept. */
  MEDIA_UNKNOWN: ['allowed'],
  /** Its first bytes are those of another form than it is said to have. */
  MEDIA_NOT_AS_SAID: ['given', 'allowed'],
  /** Its bytes don't give the digest under which it came: cut on the way, or another file. */
  MEDIA_DIGEST: ['given', 'allowed'],
} as const satisfies Record<string, readonly string[]>;

export type MediaProblemCode = keyof typeof mediaProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const mediaProblem = (
  code: MediaProblemCode,
  path: string,
  rest: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...rest });
