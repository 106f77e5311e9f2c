/** Times by which a setting may be more or less than what the book or another moment says before it is asked about. Common practice. */
const far = 100;

/** SI, of any kind: beyond it nothing at a bottling line is set. Common practice. */
const beyondAll = 1e9;

/**
 * Whether a value looks like a slip of the hand: no bound speaks of it, so it is asked about and never refused.
 *
 * Method   beyond a thousand million in SI, of the other sign, or a hundred times more or less than any that is known;
 *          nothing is told of a zero, which may well be meant
 * Symbols  known  what the book wants and what was read at the other moments, SI
 */
export const isOdd = (value: number, known: readonly number[]): boolean => {
  if (Math.abs(value) > beyondAll) return true;
  const others = known.filter((one) => one !== 0);
  if (value === 0 || others.length === 0) return false;
  return others.every((one) => value / one < 1 / far || value / one > far);
};
