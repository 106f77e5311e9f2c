import type { Kind } from '../quantity/kinds.ts';
import type { ChoiceField, ListField, NumberField } from './frame.ts';

type NumberBounds = Omit<NumberField, 'type' | 'kind' | 'symbol'>;
type ListBounds = Omit<ListField, 'type' | 'kind' | 'symbol'>;

/** A field of one number: its kind, its symbol in TeX, and what is accepted, in SI. */
export const numberField = (kind: Kind, symbol: string, bounds: NumberBounds = {}): NumberField => ({
  type: 'number',
  kind,
  symbol,
  ...bounds,
});

/** A field of several numbers of one kind. */
export const listField = (kind: Kind, symbol: string, bounds: ListBounds = {}): ListField => ({
  type: 'list',
  kind,
  symbol,
  ...bounds,
});

/** A tenth of a gram in half a litre, and what follows from it: a gauge's four digits would hide the answer. */
const weighedDigits = 6;

/** A number that a balance gives, or that follows from one. */
export const weighedField = (
  kind: 'volume' | 'mass' | 'density',
  symbol: string,
  bounds: NumberBounds = {},
): NumberField => numberField(kind, symbol, { digits: weighedDigits, ...bounds });

/** Several numbers of a balance. */
export const weighedList = (kind: 'volume' | 'mass', symbol: string, bounds: ListBounds = {}): ListField =>
  listField(kind, symbol, { digits: weighedDigits, ...bounds });

/** A field that is one of a few words. */
export const choiceField = <T extends string>(
  symbol: string,
  options: readonly T[],
  assumed?: T,
): ChoiceField<T> => ({
  type: 'choice',
  symbol,
  options,
  ...(assumed === undefined ? {} : { assumed }),
});
