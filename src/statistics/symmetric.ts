import { type Symmetric, zeroMatrix } from './cholesky.ts';

/** Lower triangle of a sum. */
export const sumOf = (...matrices: readonly Symmetric[]): Float64Array[] =>
  matrices[0]!.map((row, i) => {
    const sum = Float64Array.from(row);
    for (const other of matrices.slice(1)) {
      for (let j = 0; j <= i; j++) sum[j] = sum[j]! + other[i]![j]!;
    }
    return sum;
  });

/** Sum of the entries of A times those of a matrix of which only the lower triangle is kept. */
export const traceOf = (a: Symmetric, lower: Symmetric): number => {
  let trace = 0;
  lower.forEach((row, i) => {
    for (let j = 0; j < i; j++) trace += 2 * row[j]! * a[i]![j]!;
    trace += row[i]! * a[i]![i]!;
  });
  return trace;
};

/** A H A, of which H is kept as a lower triangle. */
export const between = (a: Symmetric, lower: Symmetric): Float64Array[] => {
  const n = a.length;
  const half = zeroMatrix(n);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < n; k++) {
      const h = i >= k ? lower[i]![k]! : lower[k]![i]!;
      if (h === 0) continue;
      const row = a[k]!;
      const into = half[i]!;
      for (let j = 0; j < n; j++) into[j] = into[j]! + h * row[j]!;
    }
  }
  const whole = zeroMatrix(n);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < n; k++) {
      const f = a[i]![k]!;
      if (f === 0) continue;
      const row = half[k]!;
      const into = whole[i]!;
      for (let j = 0; j < n; j++) into[j] = into[j]! + f * row[j]!;
    }
  }
  return whole;
};
