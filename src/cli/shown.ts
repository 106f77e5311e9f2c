import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { Field, Value } from '../sheets/frame.ts';

/** A value of a sheet's field as it is printed: one, several, or a word. */
export const shownField = (value: Value, field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice' || typeof value === 'string') return String(value);
  const numbers = typeof value === 'number' ? [value] : value;
  return numbers.map((number) => shown(number, field.kind, wishes, locale, field.digits)).join('; ');
};
