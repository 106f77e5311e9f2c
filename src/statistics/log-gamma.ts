const halfLogTwoPi = 0.5 * Math.log(2 * Math.PI);

/** Asymptotic series of Stirling's remainder; full digits from 15 on. */
const series = (x: number): number => {
  const s = 1 / (x * x);
  return (1 / 12 - s * (1 / 360 - s * (1 / 1260 - s * (1 / 1680 - s * (1 / 1188 - s * (691 / 360360)))))) / x;
};

/**
 * Natural logarithm of the gamma function for arguments above zero.
 *
 * Method   Stirling's series at x + n >= 16, then down by Gamma(x) = Gamma(x + n) / (x (x + 1) ... (x + n - 1))
 * Symbols  x  argument  scalar  > 0
 * Returns  ln Gamma(x), to about 1e-15 absolute or relative, whichever is wider
 * Cost     O(1), at most 16 products
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 6.1.15 and 6.1.41 (memory)
 */
export const logGamma = (x: number): number => {
  let product = 1;
  let at = x;
  while (at < 16) {
    product *= at;
    at += 1;
  }
  const n = at - 1;
  return (n + 0.5) * Math.log(n) - n + halfLogTwoPi + series(n) - Math.log(product);
};

/**
 * What Stirling's formula leaves out of ln Gamma(x + 1), x above zero:
 * ln Gamma(x + 1) = (x + 1/2) ln x - x + ln(2 pi)/2 + stirlingError(x).
 *
 * Method   asymptotic series with Bernoulli numbers from 15 on; below it by the gamma function itself
 * Cost     O(1)
 * Source   C. Loader, Fast and Accurate Computation of Binomial Probabilities, 2000 (memory)
 */
export const stirlingError = (x: number): number =>
  x >= 15 ? series(x) : logGamma(x + 1) - (x + 0.5) * Math.log(x) + x - halfLogTwoPi;
