import { fPoint } from './f-distribution.ts';
import type { Tails } from './tails.ts';

/**
 * Point of the beta distribution that parts it into two given shares.
 *
 * Method   b x/(a (1 - x)) has the F distribution of 2a and 2b degrees
 * Symbols  shares  below and above, which add up to one; both are handed in so that a small one keeps its digits
 *          a, b    shapes  scalar  > 0
 * Returns  the point, 0 to 1
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.6.2 (memory)
 */
export const betaPoint = (shares: Tails, a: number, b: number): number => {
  const odds = (a / b) * fPoint(shares, 2 * a, 2 * b);
  return odds === Infinity ? 1 : odds / (1 + odds);
};
