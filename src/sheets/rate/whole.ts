import type { Problem } from '../../quantity/problem.ts';

/** A problem where a number of things is no whole number. */
export const wholeProblems = (counts: Readonly<Record<string, number>>): readonly Problem[] =>
  Object.entries(counts)
    .filter(([, count]) => !Number.isInteger(count))
    .map(([path, given]) => ({ code: 'RATE_NOT_WHOLE', path, given, allowed: '0, 1, 2 …' }));
