import { noncentralTQuantile } from './noncentral-t.ts';
import { normalQuantile } from './normal.ts';

/**
 * One-sided tolerance factor: with the stated confidence, mean - k sd of a normal sample lies below a share
 * `coverage` of what it was taken from.
 *
 * Method   k = t(confidence; dof, z sqrt n)/sqrt n of the noncentral t distribution
 * Symbols  n           bottles that the mean was taken of  scalar  -  > 0
 *          coverage    share to be covered                 scalar  above 0, below 1
 *          confidence                                      scalar  above 0, below 1
 *          dof         of the standard deviation           scalar  n - 1 unless it is pooled or combined
 * Returns  factor k, to about 1e-12
 * Cost     that of a quantile of the noncentral t distribution
 * Source   [1] NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.6.3 (memory of the form)
 */
export const toleranceFactor = (
  n: number,
  coverage: number,
  confidence: number,
  dof: number = n - 1,
): number => noncentralTQuantile(confidence, dof, normalQuantile(coverage) * Math.sqrt(n)) / Math.sqrt(n);
