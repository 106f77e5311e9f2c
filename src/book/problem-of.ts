import type { Problem } from '../quantity/problem.ts';
import { pointerOf } from './pointer.ts';
import type { BookProblemCode } from './problems.ts';

/** What came, short enough to be shown: a list or an object is named, not written out. */
export const shown = (given: unknown): string => {
  if (Array.isArray(given)) return 'list';
  if (typeof given === 'object' && given !== null) return 'object';
  const text = typeof given === 'string' ? given : String(given);
  return text.length > 120 ? `${text.slice(0, 120)}…` : text;
};

/** A problem of a book at a place. */
export const problemOf = (
  code: BookProblemCode,
  steps: readonly (string | number)[],
  more: Omit<Problem, 'code' | 'path'> = {},
): Problem => ({ code, path: pointerOf(steps), ...more });
