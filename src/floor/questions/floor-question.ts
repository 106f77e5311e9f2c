import type { Kind } from '../../quantity/kinds.ts';

/** One thing that a floor is asked. */
export interface FloorQuestion {
  /** JSON Pointer into the book, where the answer will stand. */
  readonly path: string;
  /** Kind of the quantity that is asked; absent for a choice, a number, words. */
  readonly kind?: Kind;
  /** Answers among which one is chosen. */
  readonly choices?: readonly string[];
  /** The question as it is put. */
  readonly text: string;
  /** Unit in which the answer is expected; absent: the usual one of the kind. */
  readonly unit?: string;
  /** How many findings the answer would settle, a finding that wants several answers parted among them. */
  readonly settles: number;
}
