/** Slope of a state, written into `out`; nothing is allocated. */
export type SlopeInto = (y: Float64Array, out: Float64Array) => void;

/** More steps than a stroke ever takes. */
const mostSteps = 20_000;

const d = 1 / (2 + Math.SQRT2);
const e32 = 6 + Math.SQRT2;

/** Parts a matrix of n rows into two triangles, in place, with row exchanges in `order`. */
const factorise = (m: Float64Array, n: number, order: Int32Array): void => {
  for (let k = 0; k < n; k++) {
    let best = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(m[i * n + k]!) > Math.abs(m[best * n + k]!)) best = i;
    order[k] = best;
    if (best !== k) {
      for (let j = 0; j < n; j++) {
        const kept = m[k * n + j]!;
        m[k * n + j] = m[best * n + j]!;
        m[best * n + j] = kept;
      }
    }
    for (let i = k + 1; i < n; i++) {
      const factor = m[i * n + k]! / m[k * n + k]!;
      m[i * n + k] = factor;
      for (let j = k + 1; j < n; j++) m[i * n + j]! -= factor * m[k * n + j]!;
    }
  }
};

const solve = (m: Float64Array, n: number, order: Int32Array, b: Float64Array): void => {
  for (let k = 0; k < n; k++) {
    const other = order[k]!;
    const kept = b[k]!;
    b[k] = b[other]!;
    b[other] = kept;
  }
  for (let i = 1; i < n; i++) for (let j = 0; j < i; j++) b[i]! -= m[i * n + j]! * b[j]!;
  for (let i = n - 1; i >= 0; i--) {
    for (let j = i + 1; j < n; j++) b[i]! -= m[i * n + j]! * b[j]!;
    b[i]! /= m[i * n + i]!;
  }
};

/** Share of a step at which a cubic with these ends and slopes passes nothing on its way from below to above. */
const crossing = (from: number, slopeFrom: number, to: number, slopeTo: number): number => {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 50; i++) {
    const u = 0.5 * (low + high);
    const v = 1 - u;
    const value = v * v * ((1 + 2 * u) * from + u * slopeFrom) + u * u * ((1 + 2 * v) * to - v * slopeTo);
    if (value < 0) low = u;
    else high = u;
  }
  return high;
};

/**
 * Time at which one part of a stiff system of differential equations reaches a value from below.
 *
 * Method   Rosenbrock steps of order 2 with an error of order 3, slopes of the slopes by differences; the moment in
 *          the last step by a cubic through its ends
 * Symbols  slope   dy/dt
 *          start   y at the start
 *          part    which part of y
 *          goal    its value at the end
 *          scale   size of an error that is allowed in a step, by part
 *          first   first step, s
 * Returns  s; NaN where it does not get there in 20 000 steps
 * Cost     8 slopes of 4 parts a step, some hundred steps
 * Source   L. F. Shampine, M. W. Reichelt, 1997, modified Rosenbrock triple (memory)
 */
export const timeUntil = (
  slope: SlopeInto,
  start: readonly number[],
  part: number,
  goal: number,
  scale: readonly number[],
  first: number,
): number => {
  const n = start.length;
  const y = Float64Array.from(start);
  const [next, f0, f1, f2, k1, k2, k3] = Array.from({ length: 7 }, () => new Float64Array(n)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const jacobian = new Float64Array(n * n);
  const matrix = new Float64Array(n * n);
  const order = new Int32Array(n);
  slope(y, f0);
  let time = 0;
  let h = first;
  let fresh = false;
  for (let step = 0; step < mostSteps; step++) {
    if (!fresh) {
      for (let j = 0; j < n; j++) {
        const kept = y[j]!;
        const nudge = 0.01 * scale[j]!;
        y[j] = kept + nudge;
        slope(y, f1);
        y[j] = kept;
        for (let i = 0; i < n; i++) jacobian[i * n + j] = (f1[i]! - f0[i]!) / nudge;
      }
      fresh = true;
    }
    for (let i = 0; i < n * n; i++) matrix[i] = -h * d * jacobian[i]!;
    for (let i = 0; i < n; i++) matrix[i * n + i]! += 1;
    factorise(matrix, n, order);
    k1.set(f0);
    solve(matrix, n, order, k1);
    for (let i = 0; i < n; i++) next[i] = y[i]! + 0.5 * h * k1[i]!;
    slope(next, f1);
    for (let i = 0; i < n; i++) k2[i] = f1[i]! - k1[i]!;
    solve(matrix, n, order, k2);
    for (let i = 0; i < n; i++) {
      k2[i]! += k1[i]!;
      next[i] = y[i]! + h * k2[i]!;
    }
    slope(next, f2);
    for (let i = 0; i < n; i++) k3[i] = f2[i]! - e32 * (k2[i]! - f1[i]!) - 2 * (k1[i]! - f0[i]!);
    solve(matrix, n, order, k3);
    let off = 0;
    for (let i = 0; i < n; i++) {
      off = Math.max(off, Math.abs((h / 6) * (k1[i]! - 2 * k2[i]! + k3[i]!)) / scale[i]!);
    }
    if (Number.isNaN(off)) return Number.NaN;
    if (off <= 1) {
      if (next[part]! >= goal) {
        const [from, to] = [y[part]! - goal, next[part]! - goal];
        return time + h * crossing(from, h * f0[part]!, to, h * f2[part]!);
      }
      y.set(next);
      f0.set(f2);
      time += h;
      fresh = false;
    }
    h *= Math.min(5, Math.max(0.2, 0.8 * (off + 1e-9) ** (-1 / 3)));
  }
  return Number.NaN;
};
