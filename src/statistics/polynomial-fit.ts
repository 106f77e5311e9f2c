import { type DoubleDouble, exact, multiply } from './double-double.ts';
import { columnOf } from './double-double-column.ts';
import { type LeastSquares, leastSquaresOf } from './least-squares.ts';

/**
 * Least squares of y over the powers x^0 to x^degree, lowest first; powers are formed with 32 digits, since those
 * of a narrow range of x differ late.
 *
 * Symbols  x, y     one a point   any unit
 *          degree   whole, >= 0
 *          weights  as leastSquares
 * Returns  as leastSquares, coefficients from the constant up
 */
export const polynomialFit = (
  x: readonly number[],
  y: readonly number[],
  degree: number,
  weights?: readonly number[],
): LeastSquares => {
  const powers: DoubleDouble[][] = [x.map(() => exact(1))];
  for (let j = 1; j <= degree; j++) {
    powers.push(powers[j - 1]!.map((power, row) => multiply(power, exact(x[row]!))));
  }
  const columns = powers.map((power) => columnOf(x.length, (row) => power[row]!));
  return leastSquaresOf(columns, y, weights);
};
