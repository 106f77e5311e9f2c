import { chiSquaredTails } from './chi-squared.ts';
import { stirlingError } from './log-gamma.ts';
import { normalCdf, normalDensity, normalQuantile } from './normal.ts';
import { poissonTerm } from './saddle-point.ts';
import type { Tails } from './tails.ts';

/** What lies outside is below 1e-18 of the whole. */
const negligible = 41;

interface At extends Tails {
  readonly density: number;
}

/** Over the spread of the root s of chi-squared/dof, in ln s: the normal share at t s - delta. */
const overSpread = (t: number, dof: number, delta: number): At => {
  // x = ln s; its density is front exp(dof/2 (2x + 1 - exp 2x))
  const front = Math.exp(-stirlingError(0.5 * dof)) * Math.sqrt(dof / Math.PI);
  const exponent = (x: number): number => 0.5 * dof * (2 * x - Math.expm1(2 * x));
  const step = 0.2 * Math.min(1 / Math.sqrt(2 * dof), 1 / (1 + Math.abs(delta)));
  let lower = 0;
  let upper = 0;
  let density = 0;
  const add = (x: number): boolean => {
    const power = exponent(x);
    if (!(power >= -negligible)) return false;
    const weight = Math.exp(power);
    const s = Math.exp(x);
    lower += weight * normalCdf(t * s - delta);
    upper += weight * normalCdf(delta - t * s);
    density += weight * s * normalDensity(t * s - delta);
    return true;
  };
  add(0);
  for (let i = 1; add(i * step); i++);
  for (let i = 1; add(-i * step); i++);
  const scale = front * step;
  return { lower: scale * lower, upper: scale * upper, density: scale * density };
};

/**
 * Over the normal deviate w: the share of chi-squared beyond (w + delta)/t. Of a noncentrality that is great against
 * the spread of s, where the other way wants ever more terms.
 */
const overNormal = (t: number, dof: number, delta: number): At => {
  // so far from zero the sign of t is that of delta to the last digit
  if (t <= 0) return { lower: 0, upper: 1, density: 0 };
  const step = 0.2;
  let lower = 0;
  let upper = 0;
  let density = 0;
  for (let w = -9; w <= 9; w += step) {
    const weight = step * normalDensity(w);
    const value = dof * ((w + delta) / t) ** 2;
    const tails = chiSquaredTails(value, dof);
    lower += weight * tails.upper;
    upper += weight * tails.lower;
    density += weight * poissonTerm(0.5 * dof, 0.5 * value) * (dof / t);
  }
  return { lower, upper, density };
};

/** Tails and density at t, by the way that wants fewer terms. */
const noncentralT = (t: number, dof: number, delta: number): At => {
  if (dof === Infinity) {
    return { lower: normalCdf(t - delta), upper: normalCdf(delta - t), density: normalDensity(t - delta) };
  }
  if (Math.abs(delta) < 20 || Math.abs(delta) < Math.sqrt(2 * dof)) return overSpread(t, dof, delta);
  if (delta > 0) return overNormal(t, dof, delta);
  const { lower, upper, density } = overNormal(-t, dof, -delta);
  return { lower: upper, upper: lower, density };
};

/**
 * Share of the noncentral t distribution below t.
 *
 * Method   the definition as an integral over one of its two parts, by the trapezoidal rule, which converges
 *          exponentially on them
 * Symbols  t      deviate             scalar  -
 *          dof    degrees of freedom  scalar  -  > 0, need not be whole; infinite is the normal distribution
 *          delta  noncentrality       scalar  -
 * Returns  share, to about 1e-14
 * Cost     some hundred terms
 * Source   definition
 */
export const noncentralTCdf = (t: number, dof: number, delta: number): number =>
  noncentralT(t, dof, delta).lower;

/**
 * Deviate as if t times the mean of s less the normal deviate were normal: good to some per cent, and none where
 * few degrees and a far tail leave no such point.
 */
const firstGuess = (z: number, dof: number, delta: number): number | undefined => {
  const mean = 1 - 1 / (4 * dof);
  const rest = mean * mean - (z * z) / (2 * dof);
  const root = mean * mean + (delta * delta - z * z) / (2 * dof);
  return rest > 0.1 && root > 0 ? (mean * delta + z * Math.sqrt(root)) / rest : undefined;
};

/**
 * Deviate below which a share p of the noncentral t distribution lies.
 *
 * Method   Newton, kept between the points that enclose the root
 * Symbols  p      share               scalar  -  above 0, below 1
 *          dof    degrees of freedom  scalar  -  > 0, need not be whole; infinite is the normal distribution
 *          delta  noncentrality       scalar  -
 * Returns  quantile, to about 1e-13; NaN for a share outside 0 to 1
 * Cost     about ten times that of the share
 * Source   definition
 */
export const noncentralTQuantile = (p: number, dof: number, delta: number): number => {
  if (!(p > 0 && p < 1)) return Number.NaN;
  const z = normalQuantile(p);
  if (dof === Infinity) return delta + z;
  let low = -Infinity;
  let high = Infinity;
  let width = 1 + Math.abs(delta) / Math.sqrt(2 * dof);
  let t = firstGuess(z, dof, delta) ?? delta + z * width;
  for (let i = 0; i < 200; i++) {
    const { lower, upper, density } = noncentralT(t, dof, delta);
    const over = p <= 0.5 ? lower - p : 1 - p - upper;
    if (Number.isNaN(over)) return Number.NaN;
    if (over === 0) return t;
    if (over < 0) low = t;
    else high = t;
    let next = t - over / density;
    if (!(next > low && next < high) || Math.abs(next - t) > 10 * width) {
      if (low === -Infinity) next = high - width;
      else if (high === Infinity) next = low + width;
      else next = 0.5 * (low + high);
      width *= 2;
    }
    // a step of Newton's as small as this leaves an error of its square; what is left is rounding
    if (Math.abs(next - t) <= 1e-12 * Math.max(1, Math.abs(t))) return next;
    t = next;
  }
  return t;
};
