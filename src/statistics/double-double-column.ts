import { type DoubleDouble, productError, sumError } from './double-double.ts';

/** A column of numbers of 32 digits, in two arrays: the loops over it are where a fit spends its time. */
export interface Column {
  readonly high: Float64Array;
  readonly low: Float64Array;
}

export const columnOf = (length: number, entry: (row: number) => DoubleDouble): Column => {
  const column = { high: new Float64Array(length), low: new Float64Array(length) };
  for (let row = 0; row < length; row++) {
    const { high, low } = entry(row);
    column.high[row] = high;
    column.low[row] = low;
  }
  return column;
};

/** Scalar product of two columns. */
export const dot = (a: Column, b: Column): DoubleDouble => {
  let high = 0;
  let low = 0;
  for (let row = 0; row < a.high.length; row++) {
    const [x, y] = [a.high[row]!, b.high[row]!];
    const product = x * y;
    const rest = productError(x, y, product) + (x * b.low[row]! + a.low[row]! * y);
    const sum = high + product;
    low += sumError(high, product, sum) + rest;
    high = sum + low;
    low -= high - sum;
  }
  return { high, low };
};

/** Takes `factor` times the other column from the first one, in place. */
export const takeMultiple = (from: Column, factor: DoubleDouble, other: Column): void => {
  const f = -factor.high;
  const g = -factor.low;
  for (let row = 0; row < from.high.length; row++) {
    const x = other.high[row]!;
    const product = f * x;
    const rest = productError(f, x, product) + (f * other.low[row]! + g * x);
    const here = from.high[row]!;
    const sum = here + product;
    const low = sumError(here, product, sum) + (rest + from.low[row]!);
    const high = sum + low;
    from.high[row] = high;
    from.low[row] = low - (high - sum);
  }
};
