/** Nobody waits for so many; where even then nothing is claimed the answer is this. */
const most = 1e18;

/**
 * Least whole number from `low` on at which a claim holds that stays true once it is true.
 *
 * Method   doubling until it holds, then halving
 * Returns  the number; where it is beyond 2^53 to a double's digits, and none above 1e18
 * Cost     about twice the binary digits of the answer in calls
 * Source   bisection
 */
export const leastWhole = (claim: (n: number) => boolean, low: number): number => {
  if (claim(low)) return low;
  let below = low;
  let above = 2 * low;
  while (!claim(above) && above < most) {
    below = above;
    above *= 2;
  }
  while (above - below > 1) {
    const middle = Math.floor(0.5 * (below + above));
    // beyond 2^53 not every whole number is there to be tried
    if (!(middle > below && middle < above)) break;
    if (claim(middle)) above = middle;
    else below = middle;
  }
  return above;
};
