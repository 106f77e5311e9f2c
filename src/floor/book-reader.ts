import type { Book } from '../book/index.ts';
import { valueAt } from '../book/value-at.ts';
import type { Kind } from '../quantity/kinds.ts';
import { type Reading, readEntry } from '../quantity/read-entry.ts';

/** Everything that was read from a book so far, each place once; shared by all variations of it. */
interface Read {
  readonly readings: Map<string, Reading<Kind> | undefined>;
  readonly found: Map<string, unknown>;
}

/**
 * Quantities of a book as plain SI numbers, with an account of what was missing and what was assumed.
 * A variation sees one or more places with another value: that is how an interval is found.
 */
export interface BookReader {
  readonly book: Book;
  /** The number at a place; undefined where nothing stands or nothing readable. */
  readonly number: (path: string, kind: Kind) => number | undefined;
  /** The number at a place, or a default that is then marked as assumed. */
  readonly numberOr: (path: string, kind: Kind, assumed: number) => number;
  /** The number at a place; its absence is noted as what makes the answer unknown. */
  readonly needed: (path: string, kind: Kind) => number | undefined;
  readonly miss: (path: string) => void;
  readonly assume: (path: string, taken?: number) => void;
  /** The full reading, for its ends and its standing. */
  readonly reading: (path: string, kind: Kind) => Reading<Kind> | undefined;
  readonly account: Account;
  /** Places that this variation has at another value. */
  readonly changes: ReadonlyMap<string, number>;
  /** Costly results that hold for this book whatever is varied, by a key that says all that they rest on. */
  readonly found: Map<string, unknown>;
  /** The same book with an account of its own. */
  readonly scope: () => BookReader;
  readonly vary: (changes: ReadonlyMap<string, number>) => BookReader;
}

export interface Account {
  /** Places that were read, with what stood there. */
  readonly used: Map<string, Reading<Kind>>;
  readonly missing: Set<string>;
  /** Places that were left out, with the number that was taken where there is one. */
  readonly assumed: Map<string, number | undefined>;
}

const freshAccount = (): Account => ({ used: new Map(), missing: new Set(), assumed: new Map() });

const readerOver = (
  book: Book,
  read: Read,
  changes: ReadonlyMap<string, number>,
  account: Account,
): BookReader => {
  const reading = (path: string, kind: Kind): Reading<Kind> | undefined => {
    if (!read.readings.has(path)) {
      const given = valueAt(book, path);
      const result = given === undefined ? undefined : readEntry(given, kind, { path });
      read.readings.set(path, result?.ok ? result.value : undefined);
    }
    const found = read.readings.get(path);
    if (found !== undefined) account.used.set(path, found);
    return found;
  };
  const number = (path: string, kind: Kind): number | undefined => {
    const found = reading(path, kind);
    return found === undefined ? undefined : (changes.get(path) ?? found.value);
  };
  const assume = (path: string, taken?: number): void => void account.assumed.set(path, taken);
  const miss = (path: string): void => void account.missing.add(path);
  return {
    book,
    reading,
    number,
    assume,
    miss,
    account,
    changes,
    found: read.found,
    numberOr: (path, kind, assumed) => {
      const found = number(path, kind);
      if (found !== undefined) return found;
      const taken = changes.get(path) ?? assumed;
      assume(path, taken);
      return taken;
    },
    needed: (path, kind) => {
      const found = number(path, kind);
      if (found === undefined) miss(path);
      return found;
    },
    scope: () => readerOver(book, read, changes, freshAccount()),
    vary: (more) => readerOver(book, read, new Map([...changes, ...more]), freshAccount()),
  };
};

export const bookReader = (book: Book): BookReader =>
  readerOver(book, { readings: new Map(), found: new Map() }, new Map(), freshAccount());

/** Whether a place was read, or something was taken because nothing stood there. */
export const touches = ({ account }: BookReader, path: string): boolean =>
  account.used.has(path) || account.assumed.has(path);

/** Puts what other readers have noted into the account of this one. */
export const gather = (into: BookReader, from: readonly BookReader[]): void => {
  for (const { account } of from) {
    for (const [path, reading] of account.used) into.account.used.set(path, reading);
    for (const [path, taken] of account.assumed) into.account.assumed.set(path, taken);
    for (const path of account.missing) into.account.missing.add(path);
  }
};
