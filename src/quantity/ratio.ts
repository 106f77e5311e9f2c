/** An exact quotient of two whole numbers, so that a chain of factors is rounded once, at its end. */
export interface Ratio {
  readonly over: bigint;
  readonly times: bigint;
}

const divisor = (a: bigint, b: bigint): bigint => {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
};

const reduced = (times: bigint, over: bigint): Ratio => {
  const by = divisor(times, over);
  return { times: times / by, over: over / by };
};

/** The exact ratio that a positive decimal such as `0.45359237` names. */
export const exact = (decimal: string): Ratio => {
  const [whole = '0', fraction = ''] = decimal.split('.');
  return reduced(BigInt(whole + fraction), 10n ** BigInt(fraction.length));
};

export const product = (...factors: readonly Ratio[]): Ratio =>
  factors.reduce((a, b) => reduced(a.times * b.times, a.over * b.over), { times: 1n, over: 1n });

export const quotient = (a: Ratio, ...by: readonly Ratio[]): Ratio =>
  by.reduce((left, right) => reduced(left.times * right.over, left.over * right.times), a);

/**
 * The two numbers by which a value is multiplied and divided. Both are whole and exact while they fit a
 * double, so that `25.4 mm` gives the double nearest to 0.0254; otherwise the quotient, within one unit in
 * the last place.
 */
export const asPair = (ratio: Ratio): readonly [times: number, over: number] => {
  const most = BigInt(Number.MAX_SAFE_INTEGER);
  return ratio.times <= most && ratio.over <= most
    ? [Number(ratio.times), Number(ratio.over)]
    : [Number(ratio.times) / Number(ratio.over), 1];
};
