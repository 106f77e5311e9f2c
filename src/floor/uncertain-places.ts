import type { Kind } from '../quantity/kinds.ts';
import type { Reading } from '../quantity/read-entry.ts';
import type { Account } from './book-reader.ts';
import { assumedWidth, guessedWidth, statedWidth } from './default-spread.ts';

/** Why a value is not sure: it was measured or said with a width, said without one, or had to be assumed. */
export type Doubt = 'given' | 'stated' | 'assumed';

export interface UncertainPlace {
  readonly path: string;
  readonly ends: readonly [low: number, high: number];
  readonly doubt: Doubt;
}

/** The width of a value that was read; nothing where it is sure. */
export const readPlace = (path: string, reading: Reading<Kind>): UncertainPlace | undefined => {
  const value = reading.value as number;
  if (reading.shape !== 'exact') return { path, ends: [reading.low, reading.high], doubt: 'given' };
  if (reading.standing === 'measured') return undefined;
  const doubt = reading.standing;
  const width = doubt === 'assumed' ? guessedWidth(path, value) : statedWidth(path, value);
  return width !== undefined && width > 0 ? { path, ends: [value - width, value + width], doubt } : undefined;
};

/** The width of a default. */
export const assumedPlace = (path: string, taken: number | undefined): UncertainPlace | undefined => {
  const width = taken === undefined ? undefined : assumedWidth(path, taken);
  return taken === undefined || width === undefined
    ? undefined
    : { path, ends: [taken - width, taken + width], doubt: 'assumed' };
};

/** Places of a book that were read and whose values are not sure, each once. */
export const uncertainPlaces = (accounts: readonly Account[]): readonly UncertainPlace[] => {
  const places = new Map<string, UncertainPlace>();
  const add = (path: string, make: () => UncertainPlace | undefined): void => {
    const place = places.has(path) ? undefined : make();
    if (place !== undefined) places.set(path, place);
  };
  for (const account of accounts) {
    for (const [path, reading] of account.used) add(path, () => readPlace(path, reading));
    for (const [path, taken] of account.assumed) add(path, () => assumedPlace(path, taken));
  }
  return [...places.values()];
};
