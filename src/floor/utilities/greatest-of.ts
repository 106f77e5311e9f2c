import type { Calculation } from './calculation.ts';
import type { Known } from './known.ts';

/** The greatest of the values that are known; with others another of them may be it. Undefined where none is known. */
export const greatestOf = (c: Calculation, all: readonly (Known | undefined)[]): Known | undefined => {
  const known = all.flatMap((each) => each ?? []);
  const [first] = known;
  if (first === undefined || known.length === 1) return first;
  const top = known.reduce((a, b) => (b.value > a.value ? b : a));
  return c.derive(known, Math.max, top.from);
};
