import type { Tails } from './tails.ts';

/** A distribution on the positive numbers, by its two tails and its density. */
export interface PositiveDistribution {
  readonly tails: (x: number) => Tails;
  readonly density: (x: number) => number;
}

/**
 * Point of a distribution on the positive numbers that parts it into two given shares.
 *
 * Method   Newton on the logarithm of the smaller tail over the logarithm of x, where it is nearly straight;
 *          halving between the points that enclose the root where a step leaves them
 * Symbols  shares  below and above, which add up to one; both are handed in so that a small one keeps its digits
 *          start   first guess  scalar  > 0
 * Returns  the point: 0 and Infinity at the ends, NaN for shares outside 0 to 1
 * Cost     5 to 15 calls of the tails
 */
export const positiveQuantile = (
  { tails, density }: PositiveDistribution,
  shares: Tails,
  start: number,
): number => {
  if (!(shares.lower >= 0 && shares.upper >= 0)) return Number.NaN;
  if (shares.lower === 0) return 0;
  if (shares.upper === 0) return Infinity;
  const side = shares.lower <= shares.upper ? 'lower' : 'upper';
  const sign = side === 'lower' ? 1 : -1;
  const goal = Math.log(shares[side]);
  let low = -Infinity;
  let high = Infinity;
  let x = Math.log(start);
  for (let i = 0; i < 200; i++) {
    const at = Math.exp(x);
    const tail = tails(at)[side];
    if (Number.isNaN(tail)) return Number.NaN;
    if (tail === shares[side]) return at;
    if (sign * (tail - shares[side]) < 0) low = x;
    else high = x;
    const step = (sign * (goal - Math.log(tail)) * tail) / (at * density(at));
    const size = Math.abs(step) / Math.max(1, Math.abs(x));
    if (size <= 2e-16) return Math.exp(x + step);
    let next = x + step;
    if (!(next > low && next < high)) {
      // a step as small as that leaves the ends only by the rounding of the tails: x is the root
      if (size <= 1e-12) return at;
      // as long as one end is missing the step is a bounded one; with both the middle is always good
      if (low === -Infinity) next = high - 2;
      else if (high === Infinity) next = low + 2;
      else next = 0.5 * (low + high);
    }
    x = next;
  }
  return Math.exp(x);
};
