import { type Book, valueAt } from '../../book/index.ts';
import { kindAt } from '../../book/kind-at.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import type { Value } from '../../sheets/frame.ts';

/** A unit there and back changes a number by no more than this share of it. */
const rounding = 1e-9;

/** Whether a sheet took the very value that the book has at a place, and not one that was made of it. */
export const isAsWritten = (book: Book, path: string, taken: Value): boolean => {
  const written = valueAt(book, path);
  if (typeof taken !== 'number') return written === taken || valueAt(book, `${path}/value`) === taken;
  const kind = kindAt(path);
  const read = kind === undefined ? undefined : readEntry(written, kind, { path });
  const number = read?.ok ? read.value.value : written;
  return typeof number === 'number' && Math.abs(number - taken) <= rounding * Math.abs(taken);
};
