import type { Account } from './book-reader.ts';
import { assumedWidth, guessedWidth, statedWidth } from './default-spread.ts';

/** Why a value is not sure: it was measured or said with a width, said without one, or had to be assumed. */
export type Doubt = 'given' | 'stated' | 'assumed';

export interface UncertainPlace {
  readonly path: string;
  readonly ends: readonly [low: number, high: number];
  readonly doubt: Doubt;
}

/** Places of a book that were read and whose values are not sure, each once. */
export const uncertainPlaces = (accounts: readonly Account[]): readonly UncertainPlace[] => {
  const places = new Map<string, UncertainPlace>();
  for (const account of accounts) {
    for (const [path, reading] of account.used) {
      if (places.has(path)) continue;
      const value = reading.value as number;
      if (reading.shape !== 'exact') {
        places.set(path, { path, ends: [reading.low, reading.high], doubt: 'given' });
      } else if (reading.standing !== 'measured') {
        const doubt = reading.standing;
        const width = doubt === 'assumed' ? guessedWidth(path, value) : statedWidth(path, value);
        if (width !== undefined && width > 0) {
          places.set(path, { path, ends: [value - width, value + width], doubt });
        }
      }
    }
    for (const [path, taken] of account.assumed) {
      const width = taken === undefined ? undefined : assumedWidth(path, taken);
      if (taken === undefined || width === undefined || places.has(path)) continue;
      places.set(path, { path, ends: [taken - width, taken + width], doubt: 'assumed' });
    }
  }
  return [...places.values()];
};
