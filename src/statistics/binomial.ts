import { incompleteBeta } from './incomplete-beta.ts';

/**
 * Chance of at most k hits in n trials.
 *
 * Method   incomplete beta function I_(1-p)(n - k, k + 1)
 * Symbols  k  hits              count   whole
 *          n  trials            count   whole, >= 0
 *          p  chance of a hit   scalar  0 to 1
 * Returns  chance, 0 to 1, with its own digits also where it is small
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.5.24 (memory)
 */
export const binomialCdf = (k: number, n: number, p: number): number => {
  if (k < 0) return 0;
  if (k >= n) return 1;
  return incompleteBeta(k + 1, n - k, p, 1 - p).upper;
};

/** Chance of k hits or more in n trials, with its own digits also where it is small. */
export const binomialUpperTail = (k: number, n: number, p: number): number => {
  if (k <= 0) return 1;
  if (k > n) return 0;
  return incompleteBeta(k, n - k + 1, p, 1 - p).lower;
};
