import type { Book } from '../book/index.ts';
import { valueAt } from '../book/value-at.ts';
import type { Kind } from '../quantity/kinds.ts';
import { type Reading, readEntry } from '../quantity/read-entry.ts';
import { type Kept, partOf, type Watch, watchOver } from './looked-at.ts';

/** What was read at a place, if anything readable stands there, and the part of the book that it is in. */
interface ReadPlace {
  readonly part: string;
  readonly reading: Reading<Kind> | undefined;
}

/** Everything that was read from a book so far, each place once; shared by all variations of it. */
interface Read {
  readonly readings: Map<string, ReadPlace>;
  readonly kept: Map<string, Kept>;
}

/** A book that was read before, of which another may have the very same parts. */
export interface ReadBefore extends Read {
  readonly book: Book;
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
  /**
   * What rests on the book alone and on its key, whatever is varied: made once, and taken over from the book before where all parts that
   * were looked at for it are the very same.
   *
   * Assumes  what is made does not hold on to this reader: it may outlive it by many books
   */
  readonly kept: <T>(key: string, make: () => T) => T;
  /** The same where it has been made by now. */
  readonly keptByNow: <T>(key: string) => T | undefined;
  /** What has been read and kept of this one, for a book like it. */
  readonly soFar: ReadBefore;
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

/** Whether what stands at a place is what stood there before: the very same can't have changed. */
const sameAsIn = (book: Book, before: Book): ((path: string) => boolean) => {
  const places = new Map<string, boolean>();
  return (path) => {
    let same = places.get(path);
    if (same === undefined) {
      same = valueAt(book, path) === valueAt(before, path);
      places.set(path, same);
    }
    return same;
  };
};

const readPlace = (book: Book, path: string, kind: Kind): Reading<Kind> | undefined => {
  const given = valueAt(book, path);
  const result = given === undefined ? undefined : readEntry(given, kind, { path });
  return result?.ok ? result.value : undefined;
};

/** A book with what was read of it, and what may be taken over. */
interface Source {
  readonly soFar: ReadBefore;
  readonly before: ReadBefore | undefined;
  /** Whether what stands at a place is the very same that stood in the book before. */
  readonly same: (path: string) => boolean;
  readonly watch: Watch;
}

const readerOver = (source: Source, changes: ReadonlyMap<string, number>, account: Account): BookReader => {
  const { soFar, before, same, watch } = source;
  const { book, readings } = soFar;
  const reading = (path: string, kind: Kind): Reading<Kind> | undefined => {
    let place = readings.get(path);
    if (place === undefined) {
      const part = partOf(path);
      const kept = before?.readings.get(path);
      place =
        kept !== undefined && (same(part) || same(path))
          ? kept
          : { part, reading: readPlace(book, path, kind) };
      readings.set(path, place);
    }
    watch.look(place.part);
    const found = place.reading;
    if (found !== undefined) account.used.set(path, found);
    return found;
  };
  const number = (path: string, kind: Kind): number | undefined => {
    const found = reading(path, kind);
    return found === undefined ? undefined : (changes.get(path) ?? found.value);
  };
  const assume = (path: string, taken?: number): void => void account.assumed.set(path, taken);
  const miss = (path: string): void => void account.missing.add(path);
  const keptByNow = <T>(key: string): T | undefined => {
    const found = soFar.kept.get(key);
    if (found !== undefined) watch.lookAgain(found.looked);
    return found?.value as T | undefined;
  };
  return {
    book: watch.book,
    reading,
    number,
    assume,
    miss,
    account,
    changes,
    soFar,
    keptByNow,
    kept: <T>(key: string, make: () => T): T => {
      if (!soFar.kept.has(key)) {
        const earlier = before?.kept.get(key);
        soFar.kept.set(
          key,
          earlier !== undefined && watch.holds(earlier.looked) ? earlier : watch.during(make),
        );
      }
      return keptByNow<T>(key) as T;
    },
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
    scope: () => readerOver(source, changes, freshAccount()),
    vary: (more) => readerOver(source, new Map([...changes, ...more]), freshAccount()),
  };
};

/**
 * A reader of a book.
 *
 * Symbols  before  what was read of a book that shares parts with this one: nothing in those is read again
 * Assumes  parts of a book are never changed in place
 */
export const bookReader = (book: Book, before?: ReadBefore): BookReader =>
  readerOver(
    {
      soFar: { book, readings: new Map(), kept: new Map() },
      before,
      same: before === undefined ? () => false : sameAsIn(book, before.book),
      watch: watchOver(book),
    },
    new Map(),
    freshAccount(),
  );

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
