/**
 * Root of a continuous function between two points at which it has different signs, or is zero.
 *
 * Method   Brent: inverse quadratic or secant steps, bisection whenever these do not shrink the bracket fast
 * Symbols  f   function   any continuous function
 *          a   one end    f(a) and f(b) must not have the same sign
 *          b   other end
 *          tolerance      half width of the final bracket, in the unit of a
 * Returns  the abscissa of the root; NaN where the ends do not bracket one
 * Cost     at most about 100 calls, usually 6 to 10
 * Source   R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (memory of the algorithm)
 */
export const brentRoot = (f: (x: number) => number, a: number, b: number, tolerance = 0): number => {
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 !== fb < 0)) return Number.NaN;
  let c = a;
  let fc = fa;
  let step = b - a;
  let last = step;
  for (let i = 0; i < 200; i++) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const width = 2 * Number.EPSILON * Math.abs(b) + 0.5 * tolerance;
    const middle = 0.5 * (c - b);
    if (Math.abs(middle) <= width || fb === 0) return b;
    if (Math.abs(last) < width || Math.abs(fa) <= Math.abs(fb)) {
      step = middle;
      last = middle;
    } else {
      let p: number;
      let q: number;
      const s = fb / fa;
      if (a === c) {
        p = 2 * middle * s;
        q = 1 - s;
      } else {
        const r = fb / fc;
        const u = fa / fc;
        p = s * (2 * middle * u * (u - r) - (b - a) * (r - 1));
        q = (u - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      else p = -p;
      if (2 * p < Math.min(3 * middle * q - Math.abs(width * q), Math.abs(last * q))) {
        last = step;
        step = p / q;
      } else {
        step = middle;
        last = middle;
      }
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > width ? step : Math.sign(middle) * width;
    fb = f(b);
    if (fb < 0 === fc < 0) {
      c = a;
      fc = fa;
      step = b - a;
      last = step;
    }
  }
  return b;
};
