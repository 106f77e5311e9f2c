import type { Problem } from '../quantity/problem.ts';
import type { TableProblemCode } from './problems.ts';

/** A problem of a file; the path is the part of the file that has it, empty for the whole. */
export const problemOf = (
  code: TableProblemCode,
  path = '',
  more: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path, ...more });
