import type { Problem } from '../../quantity/problem.ts';
import type { AnswerProblemCode } from './problems.ts';

/** A problem of one answer; a given text is cut to what a person needs to find it. */
export const problemOf = (
  code: AnswerProblemCode,
  path: string,
  more: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({
  code,
  path,
  ...more,
  ...(typeof more.given === 'string' && more.given.length > 120
    ? { given: `${more.given.slice(0, 120)}…` }
    : {}),
});
