import { stirlingError } from './log-gamma.ts';

/**
 * x ln(x/m) + m - x without the loss of digits that it has near x = m.
 *
 * Method   Taylor series in (x - m)/(x + m) near, the plain form elsewhere
 * Source   C. Loader, Fast and Accurate Computation of Binomial Probabilities, 2000 (memory)
 */
const deviance = (x: number, m: number): number => {
  if (Math.abs(x - m) >= 0.1 * (x + m)) return x * Math.log(x / m) + m - x;
  const v = (x - m) / (x + m);
  let sum = (x - m) * v;
  let power = 2 * x * v;
  for (let j = 1; j < 200; j++) {
    power *= v * v;
    const next = sum + power / (2 * j + 1);
    if (next === sum) break;
    sum = next;
  }
  return sum;
};

/** m^x exp(-m) / Gamma(x + 1), with all digits also where both are large; x and m above zero. */
export const poissonTerm = (x: number, m: number): number =>
  Math.exp(-stirlingError(x) - deviance(x, m)) / Math.sqrt(2 * Math.PI * x);

/**
 * p^a q^b Gamma(a + b + 1) / (Gamma(a + 1) Gamma(b + 1)), q = 1 - p, with all digits also where a and b are large.
 * Both shares are handed in, so that neither loses its digits by a subtraction.
 */
export const binomialTerm = (a: number, b: number, p: number, q: number): number => {
  const n = a + b;
  const exponent =
    stirlingError(n) - stirlingError(a) - stirlingError(b) - deviance(a, n * p) - deviance(b, n * q);
  return Math.exp(exponent) * Math.sqrt(n / (2 * Math.PI * a * b));
};
