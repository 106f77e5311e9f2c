import type { Problem } from '../quantity/problem.ts';
import { deepest } from './json-text.ts';
import { problemOf, shown } from './problem-of.ts';

/** The largest book that is read, in bytes of its text. */
export const largest = 5_000_000;

/** Enough to see what is wrong with data of the wrong sort altogether. */
const most = 100;

const isPlain = (value: object): boolean => {
  const above = Object.getPrototypeOf(value) as unknown;
  return above === null || above === Object.prototype || Array.isArray(value);
};

/**
 * What in data that did not come as text could not stand in a JSON file, lies too deep or is too much. Keys that
 * name the prototype of an object are refused here too.
 *
 * Problems BOOK_NOT_JSON, BOOK_TOO_DEEP, BOOK_TOO_LARGE, BOOK_UNKNOWN_KEY
 * Cost     O(size of the data), bounded where it runs in a circle
 */
export const plainDataProblems = (data: unknown): readonly Problem[] => {
  const problems: Problem[] = [];
  let size = 0;
  const at = (value: unknown, steps: readonly (string | number)[]): void => {
    if (size > largest || problems.length >= most) return;
    size += typeof value === 'string' ? value.length + 2 : 1;
    if (value === null || typeof value === 'string' || typeof value === 'boolean') return;
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) problems.push(problemOf('BOOK_NOT_JSON', steps, { given: shown(value) }));
      return;
    }
    if (typeof value !== 'object' || !isPlain(value)) {
      problems.push(problemOf('BOOK_NOT_JSON', steps, { given: typeof value }));
      return;
    }
    if (steps.length >= deepest) {
      problems.push(problemOf('BOOK_TOO_DEEP', steps, { allowed: String(deepest) }));
      size = largest + 1;
      return;
    }
    if (Array.isArray(value)) {
      for (let index = 0; index < value.length && size <= largest; index += 1)
        at(value[index], [...steps, index]);
      return;
    }
    for (const key of Object.keys(value)) {
      size += key.length + 3;
      if (key === '__proto__')
        problems.push(problemOf('BOOK_UNKNOWN_KEY', steps, { given: key, allowed: [] }));
      else at((value as Record<string, unknown>)[key], [...steps, key]);
    }
  };
  at(data, []);
  if (size > largest && problems.length === 0) {
    problems.push(problemOf('BOOK_TOO_LARGE', [], { given: String(size), allowed: String(largest) }));
  }
  return problems;
};
