import { complementaryError } from './complementary-error.ts';

const rootHalf = Math.SQRT1_2;
const rootTwoPi = Math.sqrt(2 * Math.PI);

/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / rootTwoPi;

/**
 * Share of the standard normal distribution below z; `normalCdf(-z)` is the share above, with all its digits.
 *
 * Method   erfc(-z / sqrt 2) / 2
 * Symbols  z  deviate  scalar  -; infinite ends are taken
 * Returns  share, 0 to 1
 * Cost     O(1)
 * Source   definition
 */
export const normalCdf = (z: number): number => 0.5 * complementaryError(-z * rootHalf);

/**
 * Deviate below which a share p of the standard normal distribution lies.
 *
 * Method   rational first guess in the smaller tail, then three steps of Halley on the share itself
 * Symbols  p  share  scalar  0 to 1; the ends give -Infinity and Infinity, what lies outside gives NaN
 * Returns  deviate
 * Cost     O(1)
 * Source   M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, 26.2.23, for the guess (memory; its
 *          coefficients decide how many steps are wanted, not the answer)
 */
export const normalQuantile = (p: number): number => {
  if (!(p >= 0 && p <= 1)) return Number.NaN;
  if (p === 0.5) return 0;
  const lower = p < 0.5;
  const tail = lower ? p : 1 - p;
  if (tail === 0) return lower ? -Infinity : Infinity;
  const t = Math.sqrt(-2 * Math.log(tail));
  let z =
    t - (2.515517 + t * (0.802853 + t * 0.010328)) / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308)));
  for (let i = 0; i < 3; i++) {
    const over = (normalCdf(-z) - tail) / normalDensity(z);
    z += over / (1 - 0.5 * z * over);
  }
  return lower ? -z : z;
};
