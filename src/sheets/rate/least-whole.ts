/**
 * Least whole number from `low` on at which a claim holds that stays true once it is true.
 *
 * Method   doubling until it holds, then halving
 * Symbols  low  >= 1
 * Cost     about twice the binary digits of the answer in calls
 * Source   bisection
 */
export const leastWhole = (claim: (n: number) => boolean, low: number): number => {
  if (claim(low)) return low;
  let below = low;
  let above = 2 * low;
  while (!claim(above)) {
    below = above;
    above *= 2;
  }
  while (above - below > 1) {
    const middle = Math.floor(0.5 * (below + above));
    if (claim(middle)) above = middle;
    else below = middle;
  }
  return above;
};
