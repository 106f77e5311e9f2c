import { binomialTerm } from './saddle-point.ts';
import type { Tails } from './tails.ts';

/** Far more than any argument wants; about ten times the root of the larger shape are used. */
const mostTerms = 1_000_000;
const least = 1e-300;

/** Continued fraction of I_x(a, b) without its front factor; fast where x < (a + 1)/(a + b + 2). */
const fraction = (a: number, b: number, x: number): number => {
  let c = 1;
  let d = 1 - ((a + b) * x) / (a + 1);
  d = 1 / (Math.abs(d) < least ? least : d);
  let h = d;
  for (let m = 1; m < mostTerms; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 + even * d;
    d = 1 / (Math.abs(d) < least ? least : d);
    c = 1 + even / c;
    if (Math.abs(c) < least) c = least;
    h *= c * d;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 + odd * d;
    d = 1 / (Math.abs(d) < least ? least : d);
    c = 1 + odd / c;
    if (Math.abs(c) < least) c = least;
    const ratio = c * d;
    h *= ratio;
    // the other way round it would go on for ever over what is no number
    if (!(Math.abs(ratio - 1) >= 1e-16)) break;
  }
  return h;
};

/**
 * Regularised incomplete beta function I_x(a, b) and 1 - I_x(a, b).
 *
 * Method   continued fraction by Lentz, from that end from which it is fast
 * Symbols  a, b  shapes    scalar  -  > 0
 *          x     argument  scalar  -  0 to 1
 *          y     1 - x, handed in so that it keeps its digits where x is close to one
 * Returns  both tails; the smaller of them has its own digits
 * Cost     O(1), of large shapes about the root of the larger
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.5.8; W. H. Press and others,
 *          Numerical Recipes, 3rd edition 2007, 6.4 (memory of both)
 */
export const incompleteBeta = (a: number, b: number, x: number, y: number): Tails => {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (y <= 0) return { lower: 1, upper: 0 };
  // x^a y^b / B(a, b)
  const front = (binomialTerm(a, b, x, y) * a * b) / (a + b);
  if (x < (a + 1) / (a + b + 2)) {
    const lower = Math.min(1, (front * fraction(a, b, x)) / a);
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, (front * fraction(b, a, y)) / b);
  return { lower: 1 - upper, upper };
};
