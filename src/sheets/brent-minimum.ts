const golden = (3 - Math.sqrt(5)) / 2;

/**
 * Place of a minimum of a function of one number inside an interval.
 *
 * Method   Brent: parabola through the three best points, golden section where the parabola misleads
 * Symbols  f   function; a, b  ends of the interval, a < b
 *          tolerance  relative width of the final interval; below 1e-8 a minimum cannot be told apart
 * Returns  the abscissa; of a function with several minima one of them
 * Cost     about 20 to 40 calls
 * Source   R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5 (memory of the algorithm)
 */
export const brentMinimum = (f: (x: number) => number, a: number, b: number, tolerance = 1e-8): number => {
  let x = a + golden * (b - a);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let last = 0;
  for (let i = 0; i < 100; i++) {
    const middle = 0.5 * (a + b);
    const width = tolerance * Math.abs(x) + 1e-12;
    if (Math.abs(x - middle) <= 2 * width - 0.5 * (b - a)) return x;
    let parabola = false;
    if (Math.abs(last) > width) {
      const r = (x - w) * (fx - fv);
      let q = (x - v) * (fx - fw);
      let p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      q = Math.abs(q);
      if (Math.abs(p) < Math.abs(0.5 * q * last) && p > q * (a - x) && p < q * (b - x)) {
        last = step;
        step = p / q;
        const u = x + step;
        if (u - a < 2 * width || b - u < 2 * width) step = x < middle ? width : -width;
        parabola = true;
      }
    }
    if (!parabola) {
      last = x < middle ? b - x : a - x;
      step = golden * last;
    }
    const u = x + (Math.abs(step) >= width ? step : Math.sign(step) * width);
    const fu = f(u);
    if (fu <= fx) {
      if (u < x) b = x;
      else a = x;
      v = w;
      fv = fw;
      w = x;
      fw = fx;
      x = u;
      fx = fu;
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu <= fw || w === x) {
        v = w;
        fv = fw;
        w = u;
        fw = fu;
      } else if (fu <= fv || v === x || v === w) {
        v = u;
        fv = fu;
      }
    }
  }
  return x;
};
