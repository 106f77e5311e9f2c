import { normalCdf, normalDensity } from '../statistics/normal.ts';

/** What a bottle tells that overflowed: it got at least so much. */
export interface Censored {
  /** Slope of its likelihood with the mean, in 1/deviation. */
  readonly pull: number;
  /** What it weighs against a bottle that was weighed whole, 0 to 1. */
  readonly weight: number;
  /** Its part in the sum of squares, as a share of the variance: what a whole bottle has 1 of. */
  readonly square: number;
}

/**
 * A value of which only a lower bound is known, in a normal distribution.
 *
 * Method   a = (bound - mean)/deviation, h = phi(a)/(1 - Phi(a)): pull h, weight h (h - a), square a h
 * Symbols  bound, mean, deviation  scalars  of one unit
 * Source   J. Tobin, Estimation of relationships for limited dependent variables, Econometrica 26 (1958) 24: slope and
 *          curvature of ln(1 - Phi) (memory; derived)
 */
export const censored = (bound: number, mean: number, deviation: number): Censored => {
  const a = (bound - mean) / deviation;
  // far out in the tail the quotient of two vanishing numbers is its own asymptote
  const h = a > 30 ? a + 1 / a : normalDensity(a) / normalCdf(-a);
  return { pull: h, weight: Math.min(1, Math.max(0, h * (h - a))), square: a * h };
};
