import { formatQuantity } from './format-quantity.ts';
import { type Kind, si } from './kinds.ts';
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
