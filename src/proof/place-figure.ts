import { type Book, valueAt } from '../book/index.ts';
import type { Figure } from '../floor/assessment.ts';
import type { Kind } from '../quantity/kinds.ts';
import { readEntry } from '../quantity/read-entry.ts';

/** A number that the book says, as a figure; what is not there, or can't be read, is missing. */
export const placeFigure = (book: Book, path: string, kind: Kind): Figure => {
  const given = valueAt(book, path);
  const read = given === undefined ? undefined : readEntry(given, kind, { path });
  const common = { id: path, kind, path, assumed: [] };
  if (read === undefined || !read.ok) return { ...common, missing: [path] };
  const { value, low, high } = read.value;
  return { ...common, value, missing: [], ...(low < high ? { low, high } : {}) };
};
