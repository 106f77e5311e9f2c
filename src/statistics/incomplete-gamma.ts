import { poissonTerm } from './saddle-point.ts';
import type { Tails } from './tails.ts';

/** Far more than any argument wants; about ten times the root of a are used. */
const mostTerms = 1_000_000;

/**
 * Regularised incomplete gamma function, as both its tails: P(a, x) and Q(a, x) = 1 - P(a, x).
 *
 * Method   series of P below x = a + 1, Legendre's continued fraction of Q above, by Lentz; the other is 1 less it
 * Symbols  a  shape     scalar  -  > 0
 *          x  argument  scalar  -  >= 0
 * Returns  both tails; the smaller of them has its own digits
 * Cost     O(1), near x = a of large a about the root of a
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 6.5.29 and 6.5.31 (memory)
 */
export const incompleteGamma = (a: number, x: number): Tails => {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x === Infinity) return { lower: 1, upper: 0 };
  const front = poissonTerm(a, x);
  if (x < a + 1) {
    let term = 1;
    let sum = 1;
    for (let n = 1; n < mostTerms; n++) {
      term *= x / (a + n);
      sum += term;
      if (!(term >= 1e-17 * sum)) break;
    }
    const lower = Math.min(1, front * sum);
    return { lower, upper: 1 - lower };
  }
  let b = x + 1 - a;
  let c = Infinity;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i < mostTerms; i++) {
    const step = -i * (i - a);
    b += 2;
    d = 1 / (step * d + b);
    c = b + step / c;
    const ratio = c * d;
    h *= ratio;
    // the other way round it would go on for ever over what is no number
    if (!(Math.abs(ratio - 1) >= 1e-16)) break;
  }
  const upper = Math.min(1, front * a * h);
  return { lower: 1 - upper, upper };
};
