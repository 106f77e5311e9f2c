import type { Kind } from '../../quantity/kinds.ts';
import type { Result } from '../../quantity/problem.ts';
import { type Reading, readEntry } from '../../quantity/read-entry.ts';
import { findUnit } from '../../quantity/unit-lookup.ts';

/** A quantity of a record in SI. */
export interface TypedNumber {
  readonly value: number;
  /** Standard deviation where it was typed with its spread. */
  readonly deviation?: number;
  /** What one in the last typed digit is worth, SI. */
  readonly lastDigit: number;
  /** The digits that were typed, in their unit. */
  readonly typed: string;
}

/** Digits of the first number of a text, with its mark. */
const firstNumber = /\d[\d\s]*(?:[.,]\d+)?|[.,]\d+/;

const of = <K extends Kind>(text: string, kind: K, { value, sd, unit }: Reading<K>): TypedNumber => {
  const typed = (firstNumber.exec(text)?.[0] ?? '').replace(/\s/g, '');
  const decimals = /[.,](\d+)$/.exec(typed)?.[1]?.length ?? 0;
  const found = findUnit(kind, unit);
  const step = found === undefined ? 1 : found.times / found.over;
  return {
    value,
    lastDigit: 10 ** -decimals * Math.abs(step),
    typed,
    ...(sd === undefined ? {} : { deviation: sd }),
  };
};

/** The number of a quantity as it was typed, or what is wrong with it. */
export const typedNumber = (text: string, kind: Kind, path: string): Result<TypedNumber> => {
  const read = readEntry(text, kind, { path });
  return read.ok ? { ok: true, value: of(text, kind, read.value) } : read;
};
