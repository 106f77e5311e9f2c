/** First decimal digits of pi, 3 included, by Machin's formula in whole numbers. */
export const digitsOfPi = (count: number): number[] => {
  // ten more digits than asked for take up the rounding of some thousand terms
  const one = 10n ** BigInt(count + 10);
  const arctanOfInverse = (n: bigint): bigint => {
    let power = one / n;
    let sum = power;
    for (let k = 3n, sign = -1n; power !== 0n; k += 2n, sign = -sign) {
      power /= n * n;
      sum += (sign * power) / k;
    }
    return sum;
  };
  const pi = 4n * (4n * arctanOfInverse(5n) - arctanOfInverse(239n));
  return [...pi.toString().slice(0, count)].map(Number);
};
