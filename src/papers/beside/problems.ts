import type { Problem } from '../../quantity/problem.ts';

/** Every problem of a sheet of words, with the parts beside `path` that its words want. */
export const wordProblems = {
  WORDS_NO_COLUMNS: ['allowed'],
  WORDS_NONE: [],
  WORDS_ENGLISH_UNKNOWN: ['row', 'given'],
  WORDS_ENGLISH_TWICE: ['row', 'given', 'before'],
  WORDS_BRACES: ['row', 'given'],
  WORDS_PARTS_MISSING: ['row', 'given', 'wanted'],
  WORDS_PARTS_UNKNOWN: ['row', 'given', 'wanted', 'allowed'],
  WORDS_PARTS_UNCOUNTED: ['row', 'given', 'wanted'],
  WORDS_PLURAL_OTHER: ['row', 'given', 'wanted'],
  WORDS_PLURAL_FORMS: ['row', 'given', 'wanted', 'allowed'],
} as const satisfies Record<string, readonly string[]>;

export type WordProblemCode = keyof typeof wordProblems;

/** A problem of this folder; the type keeps the code among the listed ones. */
export const wordProblem = (code: WordProblemCode, rest: Omit<Problem, 'code' | 'path'> = {}): Problem => ({
  code,
  path: '',
  ...rest,
});
