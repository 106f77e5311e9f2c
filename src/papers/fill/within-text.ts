import type { Within } from '../../fill/student-sum.ts';
import type { Kind } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';

/** A value with the ends of its interval behind it. */
export interface WithinText {
  readonly value: string;
  /** Empty where both ends print like the value. */
  readonly ends: string;
}

/** Digits that tell a value as far as its interval lets them mean something, and one more. */
const tellingDigits = ({ value, lower, upper }: Within): number => {
  const half = 0.5 * (upper - lower);
  if (!(half > 0) || value === 0) return 4;
  const told = Math.floor(Math.log10(Math.abs(value))) - Math.floor(Math.log10(half)) + 2;
  return Math.min(6, Math.max(2, told));
};

export const withinText = (of: Within, kind: Kind, paper: PaperWords): WithinText => {
  const { value, lower: low, upper: high } = of;
  const digits = tellingDigits(of);
  const figure = { id: '', kind, value, low, high, assumed: [], missing: [] };
  return {
    value: paper.quantity(value, kind, digits).text,
    ends: paper.interval(figure, digits) ?? '',
  };
};
