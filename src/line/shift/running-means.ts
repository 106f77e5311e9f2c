/**
 * Means of many figures and sums of squares from them, one observation at a time.
 *
 * Method   Welford: m += (x - m)/n,  q += (x - m_before)(x - m)
 * Source   B. P. Welford, Note on a method for calculating corrected sums of squares and products, 1962
 */
export class RunningMeans {
  count = 0;
  readonly means: Float64Array;
  readonly squares: Float64Array;

  constructor(width: number) {
    this.means = new Float64Array(width);
    this.squares = new Float64Array(width);
  }

  add(figures: Float64Array): void {
    this.count += 1;
    const { count, means, squares } = this;
    for (let i = 0; i < figures.length; i++) {
      const from = figures[i]! - means[i]!;
      means[i]! += from / count;
      squares[i]! += from * (figures[i]! - means[i]!);
    }
  }
}

/** The same over the observations of both. */
interface Sums {
  readonly shifts: number;
  readonly means: readonly number[];
  readonly squares: readonly number[];
}

/**
 * Means over two lots of observations.
 *
 * Method   m = m1 + (m2 - m1) n2/n,  q = q1 + q2 + (m2 - m1)^2 n1 n2/n
 * Source   T. F. Chan, G. H. Golub, R. J. LeVeque, 1979
 */
export const pooled = (a: Sums, b: Sums): Sums => {
  const shifts = a.shifts + b.shifts;
  return {
    shifts,
    means: a.means.map((mean, i) => mean + ((b.means[i]! - mean) * b.shifts) / shifts),
    squares: a.squares.map(
      (square, i) =>
        square + b.squares[i]! + ((b.means[i]! - a.means[i]!) ** 2 * a.shifts * b.shifts) / shifts,
    ),
  };
};
