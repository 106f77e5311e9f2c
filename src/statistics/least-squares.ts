import { add, type DoubleDouble, divide, exact, multiply, squareRoot, subtract } from './double-double.ts';
import { type Column, columnOf, dot, takeMultiple } from './double-double-column.ts';

export interface LeastSquares {
  /** One a column of the design; 0 where `determined` is false. */
  readonly coefficients: readonly number[];
  /**
   * (X'WX)^-1: times the residual variance it is the covariance of the coefficients, and as it stands where the
   * weights are 1/sigma^2. Rows and columns of what is not determined are 0.
   */
  readonly covarianceUnit: readonly (readonly number[])[];
  /** y less the fit, not weighted. */
  readonly residuals: readonly number[];
  /** Sum of w e^2 over the degrees of freedom: the variance at weight one; unknown without a degree of freedom. */
  readonly residualVariance: number | undefined;
  readonly dof: number;
  readonly rank: number;
  /** False for a column that follows from those before it: the data do not say its coefficient. */
  readonly determined: readonly boolean[];
}

/**
 * A column whose part outside those before it is smaller than this share of it follows from them: the numbers
 * of a design carry sixteen digits, and a unit or a mean that was rounded leaves a few of the last ones.
 */
const dependent = 1e-13;

const zero = exact(0);

/**
 * Weighted linear least squares of a design whose entries have 32 digits.
 *
 * Method   modified Gram-Schmidt on the design and y together, R b = Q'y and R^-1 in double-double arithmetic
 * Cost     O(rows columns^2), some thirty operations each
 */
export const leastSquaresOf = (
  design: readonly Column[],
  y: readonly number[],
  weights?: readonly number[],
): LeastSquares => {
  const rows = y.length;
  const roots = weights?.map((weight) => squareRoot(exact(weight)));
  const weighted = ({ high, low }: Column): Column =>
    columnOf(rows, (row) => {
      const entry = { high: high[row]!, low: low[row]! };
      return roots === undefined ? entry : multiply(entry, roots[row]!);
    });
  const given = columnOf(rows, (row) => exact(y[row]!));
  const columns = design.map(weighted);
  const rest = weighted(given);

  // columns become Q, scaled to length one; triangle[j][k] is R, k <= j
  const triangle: DoubleDouble[][] = [];
  const onto: DoubleDouble[] = [];
  const kept: number[] = [];
  columns.forEach((column, j) => {
    const whole = squareRoot(dot(column, column));
    const parts = kept.map((i) => {
      const part = dot(columns[i]!, column);
      takeMultiple(column, part, columns[i]!);
      return part;
    });
    const left = squareRoot(dot(column, column));
    if (!(left.high > dependent * whole.high)) return;
    for (let row = 0; row < rows; row++) {
      const scaled = divide({ high: column.high[row]!, low: column.low[row]! }, left);
      column.high[row] = scaled.high;
      column.low[row] = scaled.low;
    }
    const along = dot(column, rest);
    takeMultiple(rest, along, column);
    triangle.push([...parts, left]);
    onto.push(along);
    kept.push(j);
  });

  const rank = kept.length;
  const solved: DoubleDouble[] = [];
  const inverse: DoubleDouble[][] = kept.map(() => kept.map(() => zero));
  for (let i = rank - 1; i >= 0; i--) {
    const diagonal = triangle[i]![i]!;
    let sum = onto[i]!;
    for (let k = i + 1; k < rank; k++) sum = subtract(sum, multiply(triangle[k]![i]!, solved[k]!));
    solved[i] = divide(sum, diagonal);
    for (let m = i; m < rank; m++) {
      let entry = m === i ? exact(1) : zero;
      for (let k = i + 1; k <= m; k++) {
        entry = subtract(entry, multiply(triangle[k]![i]!, inverse[k]![m]!));
      }
      inverse[i]![m] = divide(entry, diagonal);
    }
  }

  const place = new Map(kept.map((column, at) => [column, at]));
  const covarianceUnit = design.map((_, i) =>
    design.map((__, j) => {
      const [p, q] = [place.get(i), place.get(j)];
      if (p === undefined || q === undefined) return 0;
      let sum = zero;
      for (let m = Math.max(p, q); m < rank; m++) {
        sum = add(sum, multiply(inverse[p]![m]!, inverse[q]![m]!));
      }
      return sum.high;
    }),
  );
  for (const [at, column] of kept.entries()) takeMultiple(given, solved[at]!, design[column]!);
  const dof = rows - rank;
  return {
    coefficients: design.map((_, j) => solved[place.get(j) ?? -1]?.high ?? 0),
    covarianceUnit,
    residuals: [...given.high],
    residualVariance: dof > 0 ? dot(rest, rest).high / dof : undefined,
    dof,
    rank,
    determined: design.map((_, j) => place.has(j)),
  };
};

/**
 * Weighted linear least squares.
 *
 * Method   as leastSquaresOf
 * Symbols  design   X, one row an observation      any unit
 *          y        one value an observation       any unit
 *          weights  one an observation             >= 0, 1/sigma^2 up to a factor; 1 where left out
 * Returns  coefficients, unscaled covariance, residuals, variance at weight one, degrees of freedom, rank and which
 *          columns the data determine. An observation of weight 0 still counts as a degree of freedom: leave it out
 * Cost     O(rows columns^2)
 * Source   G. H. Golub, C. F. Van Loan, Matrix Computations, 3rd edition 1996, 5.2.8 and 5.3.5 (memory)
 */
export const leastSquares = (
  design: readonly (readonly number[])[],
  y: readonly number[],
  weights?: readonly number[],
): LeastSquares => {
  const width = design[0]?.length ?? 0;
  const columns = Array.from({ length: width }, (_, j) =>
    columnOf(design.length, (row) => exact(design[row]![j]!)),
  );
  return leastSquaresOf(columns, y, weights);
};
