import { fPoint, fTails } from './f-distribution.ts';
import { normalCdf, normalQuantile } from './normal.ts';

/**
 * Share of Student's distribution below t; `studentCdf(-t, dof)` is the share above, with all its digits.
 *
 * Method   t^2 has the F distribution of 1 and dof degrees, half of it on either side
 * Symbols  t    deviate             scalar  -
 *          dof  degrees of freedom  scalar  -  > 0, need not be whole; infinite is the normal distribution
 * Returns  share, 0 to 1
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.7.1 (memory)
 */
export const studentCdf = (t: number, dof: number): number => {
  if (dof === Infinity) return normalCdf(t);
  const above = 0.5 * fTails(t * t, 1, dof).upper;
  return t < 0 ? above : 1 - above;
};

/**
 * Deviate below which a share p of Student's distribution lies.
 *
 * Method   root of the quantile of t^2
 * Symbols  p    share               scalar  -  0 to 1
 *          dof  degrees of freedom  scalar  -  > 0, need not be whole; infinite is the normal distribution
 * Returns  quantile, to about 1e-14 of itself
 * Source   as studentCdf
 */
export const studentQuantile = (p: number, dof: number): number => {
  if (dof === Infinity) return normalQuantile(p);
  const tail = Math.min(p, 1 - p);
  const point = fPoint({ lower: 2 * Math.abs(p - 0.5), upper: 2 * tail }, 1, dof);
  return p < 0.5 ? -Math.sqrt(point) : Math.sqrt(point);
};
