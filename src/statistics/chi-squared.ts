import { incompleteGamma } from './incomplete-gamma.ts';
import { normalQuantile } from './normal.ts';
import { positiveQuantile } from './positive-quantile.ts';
import { poissonTerm } from './saddle-point.ts';
import type { Tails } from './tails.ts';

/** Both tails of the chi-squared distribution at x. */
export const chiSquaredTails = (x: number, dof: number): Tails => incompleteGamma(0.5 * dof, 0.5 * x);

/** Share of the chi-squared distribution below x. */
export const chiSquaredCdf = (x: number, dof: number): number => chiSquaredTails(x, dof).lower;

/** Point of the chi-squared distribution that parts it into two given shares. */
export const chiSquaredPoint = (shares: Tails, dof: number): number => {
  const h = 2 / (9 * dof);
  const cube = (1 - h + normalQuantile(shares.lower) * Math.sqrt(h)) ** 3;
  // Wilson and Hilferty's cube fails far down; any positive start will do there
  const start = Number.isFinite(cube) && cube > 0.01 ? dof * cube : 0.01 * dof;
  const density = (x: number): number => (poissonTerm(0.5 * dof, 0.5 * x) * 0.5 * dof) / x;
  return positiveQuantile({ tails: (x) => chiSquaredTails(x, dof), density }, shares, start);
};

/**
 * Value below which a share p of the chi-squared distribution lies.
 *
 * Method   root of the incomplete gamma function, in the smaller tail
 * Symbols  p    share                scalar  -  0 to 1
 *          dof  degrees of freedom   scalar  -  > 0, need not be whole
 * Returns  quantile, to about 1e-14 of itself
 * Source   definition
 */
export const chiSquaredQuantile = (p: number, dof: number): number =>
  chiSquaredPoint({ lower: p, upper: 1 - p }, dof);
