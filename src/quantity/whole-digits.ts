import { fromSi } from './convert.ts';
import { type Kind, si } from './kinds.ts';

/** Digits that print a value whole in a unit, and no finer; three at least: nobody counts the tenth of a bottle. */
export const wholeDigits = (value: number, kind: Kind, unit: string): number =>
  Math.max(3, Math.round(fromSi(si(kind, value), kind, unit)).toString().length);
