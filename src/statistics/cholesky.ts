/** A symmetric matrix that is positive definite, row by row; only its lower triangle is read. */
export type Symmetric = readonly Float64Array[];

export const zeroMatrix = (size: number): Float64Array[] =>
  Array.from({ length: size }, () => new Float64Array(size));

/** Adds weight times v v' to the lower triangle; entries of v that are zero cost nothing. */
export const addOuter = (into: Symmetric, v: Float64Array, weight: number): void => {
  for (let i = 0; i < v.length; i++) {
    const vi = weight * v[i]!;
    if (vi === 0) continue;
    const row = into[i]!;
    for (let j = 0; j <= i; j++) row[j] = row[j]! + vi * v[j]!;
  }
};

/**
 * Lower triangle L with L L' = A.
 *
 * Returns  undefined where A is not positive definite
 * Cost     O(n^3/6)
 * Source   G. H. Golub, C. F. Van Loan, Matrix Computations, 4.2 (memory)
 */
export const cholesky = (a: Symmetric): Float64Array[] | undefined => {
  const n = a.length;
  const lower = zeroMatrix(n);
  for (let i = 0; i < n; i++) {
    const row = lower[i]!;
    for (let j = 0; j <= i; j++) {
      const other = lower[j]!;
      let sum = a[i]![j]!;
      for (let k = 0; k < j; k++) sum -= row[k]! * other[k]!;
      if (i > j) row[j] = sum / other[j]!;
      else if (sum > 0) row[i] = Math.sqrt(sum);
      else return undefined;
    }
  }
  return lower;
};

/** Solves L L' x = b. */
export const choleskySolve = (lower: Symmetric, b: ArrayLike<number>): Float64Array => {
  const n = lower.length;
  const x = Float64Array.from(b);
  for (let i = 0; i < n; i++) {
    const row = lower[i]!;
    let sum = x[i]!;
    for (let k = 0; k < i; k++) sum -= row[k]! * x[k]!;
    x[i] = sum / row[i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = x[i]!;
    for (let k = i + 1; k < n; k++) sum -= lower[k]![i]! * x[k]!;
    x[i] = sum / lower[i]![i]!;
  }
  return x;
};

/** The whole inverse of L L'. */
export const choleskyInverse = (lower: Symmetric): Float64Array[] => {
  const n = lower.length;
  const unit = new Float64Array(n);
  return lower.map((_, i) => {
    unit.fill(0);
    unit[i] = 1;
    return choleskySolve(lower, unit);
  });
};
