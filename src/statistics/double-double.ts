/**
 * Numbers of about 32 digits, each the sum of two of 16: a normal equation or a power that loses ten digits
 * still keeps all that a reader sees.
 *
 * Source   T. J. Dekker, A floating-point technique for extending the available precision, 1971;
 *          D. E. Knuth, The Art of Computer Programming 2, 4.2.2 (memory of both)
 */
export interface DoubleDouble {
  readonly high: number;
  readonly low: number;
}

/** 2^27 + 1: parts a number of 53 bits into two of 26. */
const splitter = 134_217_729;

/** What a + b lost in rounding to `sum`. */
export const sumError = (a: number, b: number, sum: number): number => {
  const part = sum - a;
  return a - (sum - part) + (b - part);
};

/** What a b lost in rounding to `product`. */
export const productError = (a: number, b: number, product: number): number => {
  const wideA = splitter * a;
  const highA = wideA - (wideA - a);
  const lowA = a - highA;
  const wideB = splitter * b;
  const highB = wideB - (wideB - b);
  const lowB = b - highB;
  return lowA * lowB - (product - highA * highB - lowA * highB - highA * lowB);
};

const renormal = (high: number, low: number): DoubleDouble => {
  const sum = high + low;
  return { high: sum, low: low - (sum - high) };
};

export const exact = (high: number): DoubleDouble => ({ high, low: 0 });

export const add = (a: DoubleDouble, b: DoubleDouble): DoubleDouble => {
  const sum = a.high + b.high;
  return renormal(sum, sumError(a.high, b.high, sum) + a.low + b.low);
};

export const subtract = (a: DoubleDouble, b: DoubleDouble): DoubleDouble =>
  add(a, { high: -b.high, low: -b.low });

export const multiply = (a: DoubleDouble, b: DoubleDouble): DoubleDouble => {
  const product = a.high * b.high;
  return renormal(product, productError(a.high, b.high, product) + (a.high * b.low + a.low * b.high));
};

export const divide = (a: DoubleDouble, b: DoubleDouble): DoubleDouble => {
  const first = a.high / b.high;
  const rest = subtract(a, multiply(b, exact(first)));
  return renormal(first, rest.high / b.high);
};

export const squareRoot = (a: DoubleDouble): DoubleDouble => {
  if (a.high <= 0) return exact(0);
  const first = Math.sqrt(a.high);
  const rest = subtract(a, multiply(exact(first), exact(first)));
  return renormal(first, rest.high / (2 * first));
};
