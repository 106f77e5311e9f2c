import type { Book } from '../book/index.ts';
import { valueAt } from '../book/value-at.ts';

/**
 * Parts of a book that were looked at, by their place, with what stood there: `/floors/1/air`, `/line/stations/0/dwell`,
 * `/waits`. A place with a mark behind it, `/line#`, is what names there are, or how many members.
 */
export type Looked = ReadonlyMap<string, unknown>;

const namesMark = '#';

/** How many steps lead to a part, by how its place begins. */
const stepsTo = (path: string): number => {
  if (path.startsWith('/floors/')) return 3;
  if (path.startsWith('/line/')) return path.startsWith('/line/stations/') ? 4 : 2;
  return 1;
};

/** The part of a book that a place stands in: one of a floor's, of a station's or of the line's own, or one of the book's. */
export const partOf = (path: string): string => {
  let end = 0;
  for (let steps = stepsTo(path); steps > 0; steps--) {
    end = path.indexOf('/', end + 1);
    if (end < 0) return path;
  }
  return path.slice(0, end);
};

/** What stands at a part of a book: the part itself, of which nothing is ever changed in place, or its names as one text. */
const standingAt = (book: Book, part: string): unknown => {
  if (!part.endsWith(namesMark)) return valueAt(book, part);
  const of = valueAt(book, part.slice(0, -1));
  if (Array.isArray(of)) return of.length;
  return typeof of === 'object' && of !== null ? Object.keys(of).join(' ') : of;
};

/**
 * An object that tells which of its own parts are looked at.
 *
 * Symbols  inner  watched parts that stand in for its own: of those only the names are looked at by whoever takes them
 */
const watched = <T extends object>(
  object: T,
  path: string,
  look: (part: string) => void,
  inner: Partial<T> = {},
): T => {
  const names = `${path}${namesMark}`;
  // a copy: what is frozen may not be stood in for
  return new Proxy<T>(
    { ...object, ...inner },
    {
      get: (of, key) => {
        if (typeof key === 'string') look(`${path}/${key}${Object.hasOwn(inner, key) ? namesMark : ''}`);
        return Reflect.get(of, key);
      },
      has: (of, key) => {
        look(names);
        return Reflect.has(of, key);
      },
      ownKeys: (of) => {
        look(names);
        return Reflect.ownKeys(of);
      },
      getOwnPropertyDescriptor: (of, key) => {
        look(names);
        return Reflect.getOwnPropertyDescriptor(of, key);
      },
    },
  );
};

/**
 * A book that tells which of its parts are looked at.
 *
 * Symbols  look  is told the place of each part when it is looked at, there or not
 * Returns  a book that reads like the first; its parts are those of the first, so that they can be told to be the very same
 */
const watchedBook = (book: Book, look: (part: string) => void): Book => {
  const { line, floors } = book;
  const each = <T extends object>(list: readonly T[], path: string): readonly T[] =>
    list.map((one, i) => watched(one, `${path}/${i}`, look));
  return watched(book, '', look, {
    ...(line === undefined
      ? {}
      : {
          line: watched(
            line,
            '/line',
            look,
            line.stations === undefined ? {} : { stations: each(line.stations, '/line/stations') },
          ),
        }),
    ...(floors === undefined ? {} : { floors: each(floors, '/floors') }),
  });
};

/** What was made of a book, and the parts that were looked at for it. */
export interface Kept {
  readonly value: unknown;
  readonly looked: Looked;
}

/** Which parts of a book are looked at while something is made of it. */
export interface Watch {
  /** The book, watched. */
  readonly book: Book;
  readonly look: (part: string) => void;
  readonly during: (make: () => unknown) => Kept;
  /** Whether what was looked at stands there still; it is then looked at again by whoever asks. */
  readonly holds: (looked: Looked) => boolean;
  readonly lookAgain: (looked: Looked) => void;
}

/** Watches over a book, so that what is made of it can be told to hold for another. */
export const watchOver = (book: Book): Watch => {
  const standing = new Map<string, unknown>();
  const standingNow = (part: string): unknown => {
    let found = standing.get(part);
    if (found === undefined && !standing.has(part)) {
      found = standingAt(book, part);
      standing.set(part, found);
    }
    return found;
  };
  let looked: Map<string, unknown> | undefined;
  const look = (part: string): void => {
    if (looked !== undefined && !looked.has(part)) looked.set(part, standingNow(part));
  };
  const lookAgain = (at: Looked): void => {
    for (const [part, value] of at) looked?.set(part, value);
  };
  return {
    book: watchedBook(book, look),
    look,
    lookAgain,
    during: (make) => {
      const around = looked;
      const own = new Map<string, unknown>();
      looked = own;
      try {
        return { value: make(), looked: own };
      } finally {
        looked = around;
      }
    },
    holds: (at) => {
      for (const [part, value] of at) if (standingNow(part) !== value) return false;
      return true;
    },
  };
};
