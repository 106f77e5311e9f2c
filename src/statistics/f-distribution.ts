import { chiSquaredPoint, chiSquaredTails } from './chi-squared.ts';
import { incompleteBeta } from './incomplete-beta.ts';
import { positiveQuantile } from './positive-quantile.ts';
import { binomialTerm } from './saddle-point.ts';
import type { Tails } from './tails.ts';

/**
 * From here on the degrees of the denominator are taken as infinite, which shifts a quantile by some 1e-9 of itself:
 * nobody has so many bottles, and the continued fraction grows long.
 */
const asInfinite = 1e9;

/** Both tails of the F distribution at x; the degrees of the denominator may be infinite. */
export const fTails = (x: number, numerator: number, denominator: number): Tails => {
  if (denominator >= asInfinite) return chiSquaredTails(numerator * x, numerator);
  const whole = numerator * x + denominator;
  return incompleteBeta(0.5 * numerator, 0.5 * denominator, (numerator * x) / whole, denominator / whole);
};

/** Point of the F distribution that parts it into two given shares. */
export const fPoint = (shares: Tails, numerator: number, denominator: number): number => {
  if (denominator >= asInfinite) return chiSquaredPoint(shares, numerator) / numerator;
  const [a, b] = [0.5 * numerator, 0.5 * denominator];
  const density = (x: number): number => {
    const whole = numerator * x + denominator;
    const [p, q] = [(numerator * x) / whole, denominator / whole];
    return (binomialTerm(a, b, p, q) * a * b) / ((a + b) * x);
  };
  return positiveQuantile({ tails: (x) => fTails(x, numerator, denominator), density }, shares, 1);
};

/** Share of the F distribution below x. */
export const fCdf = (x: number, numerator: number, denominator: number): number =>
  fTails(x, numerator, denominator).lower;

/**
 * Value below which a share p of the F distribution lies.
 *
 * Method   root of the incomplete beta function, in the smaller tail
 * Symbols  p            share                                  scalar  -  0 to 1
 *          numerator    degrees of freedom of the numerator    scalar  -  > 0, need not be whole
 *          denominator  degrees of freedom of the denominator  scalar  -  > 0, need not be whole, may be infinite
 * Returns  quantile, to about 1e-14 of itself
 * Source   definition
 */
export const fQuantile = (p: number, numerator: number, denominator: number): number =>
  fPoint({ lower: p, upper: 1 - p }, numerator, denominator);
