/**
 * Value of the check character that ends a code, by a pure system of ISO/IEC 7064 with one check character.
 *
 * Method   sum over all places of a_i r^(i - 1), counted from the right with the check character first, is 1 mod M
 * Symbols  values   the characters by their place in the alphabet, 0 to M - 1
 *          modulus  M, a prime;  radix  r
 * Returns  0 to M - 1; the alphabet must have a character for each of them
 * Assumes  r no multiple of M, so that a changed character changes the sum; r - 1 neither, so that two neighbours that
 *          were swapped do
 * Cost     O(characters)
 * Source   ISO/IEC 7064:2003, pure systems (the standard itself: memory; MOD 11-2 and MOD 37-2 read in public use)
 */
export const checkValue = (values: readonly number[], modulus: number, radix: number): number => {
  const sum = values.reduce((so, value) => ((so + value) * radix) % modulus, 0);
  return (modulus + 1 - sum) % modulus;
};

/** Whether a code with its check character keeps the rule; problems and source as above. */
export const isChecked = (values: readonly number[], modulus: number, radix: number): boolean => {
  const check = values.at(-1);
  return check !== undefined && checkValue(values.slice(0, -1), modulus, radix) === check;
};
