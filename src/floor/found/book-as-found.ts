import { type Book, kindAt, type Patch, patchBook, valueAt } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { FoundProblemCode } from './problems.ts';
import type { FoundReading } from './reading.ts';

/** A reading that is laid over a place of the book. */
export interface Laid {
  readonly path: string;
  readonly reading: FoundReading;
}

export interface BookAsFound {
  readonly book: Book;
  /** The newest reading of each place. */
  readonly laid: readonly Laid[];
  /** Readings that fit no place, or not as a quantity of its kind: the rest stands all the same. */
  readonly refused: readonly { readonly reading: FoundReading; readonly problems: readonly Problem[] }[];
}

const floorUnknown: FoundProblemCode = 'READING_FLOOR_UNKNOWN';

/** Clocks of different zones are compared by the moment, not by how it is written. */
const isLater = (a: FoundReading, b: FoundReading): boolean => Date.parse(a.at) >= Date.parse(b.at);

/** Place in the book of what a reading is of. */
const placeOf = (book: Book, { floor, of }: FoundReading): string | undefined => {
  const index = (book.floors ?? []).findIndex((each) => each.tag === floor);
  return index < 0 ? undefined : `/floors/${index}/${of.replace(/^\/+/, '')}`;
};

const measured = ({ value, spread, by, at }: FoundReading): Readonly<Record<string, string>> => ({
  value,
  ...(spread === undefined ? {} : { spread }),
  standing: 'measured',
  by,
  on: at.slice(0, 10),
});

/** A plain number or word stands in the book as itself; only a quantity says who measured it. */
const patchOf = (path: string, reading: FoundReading, plain: boolean): Patch => {
  if (!plain) return { path, value: measured(reading) };
  const number = Number(reading.value);
  return { path, value: Number.isFinite(number) && reading.value.trim() !== '' ? number : reading.value };
};

/**
 * The book with what was read on arrival in the place of what was promised.
 *
 * Returns  the book, the readings that count, and those that can't be laid over it with their problems
 * Assumes  of several readings of one place the one with the latest moment counts
 */
export const bookAsFound = (book: Book, readings: readonly FoundReading[]): BookAsFound => {
  const newest = new Map<string, FoundReading>();
  const refused: { reading: FoundReading; problems: readonly Problem[] }[] = [];
  for (const reading of readings) {
    const path = placeOf(book, reading);
    if (path === undefined) {
      const allowed = (book.floors ?? []).map(({ tag }) => tag);
      refused.push({
        reading,
        problems: [{ code: floorUnknown, path: reading.of, given: reading.floor, allowed }],
      });
      continue;
    }
    const before = newest.get(path);
    if (before === undefined || isLater(reading, before)) newest.set(path, reading);
  }
  let found = book;
  const laid: Laid[] = [];
  for (const [path, reading] of newest) {
    const stands = valueAt(book, path);
    const plain = typeof stands === 'number';
    const asQuantity = patchBook(found, [patchOf(path, reading, plain)]);
    // a word of the book, such as an earthing system, is no quantity
    const patched = asQuantity.ok ? asQuantity : patchBook(found, [patchOf(path, reading, true)]);
    if (patched.ok) {
      found = patched.value;
      laid.push({ path, reading });
      continue;
    }
    // what is wrong is told for what the place takes
    const told = asQuantity.ok || kindAt(path) === undefined ? patched : asQuantity;
    refused.push({ reading, problems: told.ok ? [] : told.problems });
  }
  return { book: found, laid, refused };
};
