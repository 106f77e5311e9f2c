import type { Kind } from '../quantity/kinds.ts';
import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { Field, Value } from '../sheets/frame.ts';

/** A value of a sheet's field as it is printed: one, several, or a word. */
export const shownField = (value: Value, field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice' || typeof value === 'string') return String(value);
  const numbers = typeof value === 'number' ? [value] : value;
  return numbers.map((number) => shown(number, field.kind, wishes, locale, field.digits)).join('; ');
};

// A share of 0.999999 at most would read 1 in the usual digits, and 1 is refused.
const boundDigits = (bound: number, kind: Kind): number | undefined =>
  kind === 'count' || Number(bound.toPrecision(4)) === bound ? undefined : 6;

/** What a field accepts, in the unit that it is printed in; nothing where every number is accepted. */
export const shownBounds = (field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice') return field.options.join(', ');
  const say = (sign: string, bound: number | undefined) =>
    bound === undefined
      ? []
      : [`${sign} ${shown(bound, field.kind, wishes, locale, boundDigits(bound, field.kind))}`];
  return [
    ...say('>', field.above),
    ...say('≥', field.least),
    ...say('<', field.type === 'number' ? field.below : undefined),
    ...say('≤', field.most),
  ].join(', ');
};
