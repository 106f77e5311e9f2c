import { formatQuantity, type Kind, si } from '../quantity/index.ts';
import type { Field, Value } from '../sheets/frame.ts';
import { type UnitWishes, unitFor } from './unit-choice.ts';

/** A value of a kind as it is printed. */
export const shown = (
  value: number,
  kind: Kind,
  wishes: UnitWishes,
  locale: string,
  digits?: number,
): string =>
  formatQuantity(si(kind, value), kind, { locale, unit: unitFor(kind, value, wishes), digits }).text;

/** A value with the ends of its interval behind it, all in one unit; the ends are left out where they print alike. */
export const shownInterval = (
  value: number,
  ends: readonly [low: number, high: number],
  kind: Kind,
  wishes: UnitWishes,
  locale: string,
): string => {
  const unit = unitFor(kind, value, wishes);
  const said = (one: number) => formatQuantity(si(kind, one), kind, { locale, unit });
  const [low, high] = ends.map((end) => said(end).number);
  return low === high ? said(value).text : `${said(value).text} (${low} … ${high})`;
};

/** A value of a sheet's field as it is printed: one, several, or a word. */
export const shownField = (value: Value, field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice' || typeof value === 'string') return String(value);
  const numbers = typeof value === 'number' ? [value] : value;
  return numbers.map((number) => shown(number, field.kind, wishes, locale)).join('; ');
};

/** What a field accepts, in the unit that it is printed in; nothing where every number is accepted. */
export const shownBounds = (field: Field, wishes: UnitWishes, locale: string): string => {
  if (field.type === 'choice') return field.options.join(', ');
  const say = (sign: string, bound: number | undefined) =>
    bound === undefined ? [] : [`${sign} ${shown(bound, field.kind, wishes, locale)}`];
  return [
    ...say('>', field.above),
    ...say('≥', field.least),
    ...say('<', field.type === 'number' ? field.below : undefined),
    ...say('≤', field.most),
  ].join(', ');
};
