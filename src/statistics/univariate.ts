import { divide, exact, subtract } from './double-double.ts';
import { type Column, columnOf, dot } from './double-double-column.ts';

export interface Univariate {
  readonly mean: number;
  /** With n - 1; unknown of a single value. */
  readonly sd: number | undefined;
  /** Autocorrelation of neighbours; unknown where all values are equal. */
  readonly lag1: number | undefined;
}

const part = ({ high, low }: Column, from: number, to: number): Column => ({
  high: high.subarray(from, to),
  low: low.subarray(from, to),
});

/**
 * Mean, standard deviation and lag-1 autocorrelation of a list.
 *
 * Method   sums of the deviations from the mean in double-double arithmetic
 * Symbols  values  list  any unit  n >= 1
 * Returns  mean; sd with n - 1; sum of d[i] d[i+1] over the sum of d^2
 * Cost     O(n)
 * Source   definition
 */
export const univariate = (values: readonly number[]): Univariate => {
  const n = values.length;
  const given = columnOf(n, (i) => exact(values[i]!));
  const mean = divide(
    dot(
      given,
      columnOf(n, () => exact(1)),
    ),
    exact(n),
  );
  const deviations = columnOf(n, (i) => subtract(exact(values[i]!), mean));
  const squares = dot(deviations, deviations).high;
  const neighbours = dot(part(deviations, 0, n - 1), part(deviations, 1, n)).high;
  return {
    mean: mean.high,
    sd: n > 1 ? Math.sqrt(squares / (n - 1)) : undefined,
    lag1: squares > 0 ? neighbours / squares : undefined,
  };
};
