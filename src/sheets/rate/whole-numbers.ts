import type { Problem } from '../../quantity/problem.ts';

/** One problem for every number that counts things and is not whole. */
export const wholeNumbers = (counts: Readonly<Record<string, number>>): Problem[] =>
  Object.entries(counts)
    .filter(([, count]) => !Number.isInteger(count))
    .map(([path, count]) => ({ code: 'RATE_NOT_WHOLE', path, given: count, allowed: 'a whole number' }));
