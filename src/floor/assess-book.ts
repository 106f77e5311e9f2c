import type { Book } from '../book/index.ts';
import { assessFloor } from './assess-floor.ts';
import type { Assessment } from './assessment.ts';
import { bookReader } from './book-reader.ts';
import { type Earlier, keepReadings, readingsOf, stillHolds } from './earlier.ts';
import { formatOf } from './read-floor.ts';

export interface AssessOptions {
  /** Tag of the format; the first one where it is not given. */
  readonly format?: string;
  /** One whose floors are taken over where nothing of what they rest on has changed: a key changes one place. */
  readonly earlier?: Earlier;
}

/**
 * What each floor of a book makes the line do, what it has against what is asked, and where every number came from.
 *
 * Returns  one assessment a floor, in the order of the book; what a floor does not know comes back as unknown figures
 *          that name the places which would answer
 * Assumes  the book has been read by `readBook`
 * Cost     about a millisecond a floor and two solutions for each uncertain value
 */
export const assessBook = (book: Book, options: AssessOptions = {}): Assessment => {
  const reader = bookReader(book, readingsOf(options.earlier));
  const format = formatOf(book, options.format).format?.tag ?? '';
  const kept = stillHolds(book, format, options.earlier);
  const assessment: Assessment = {
    format,
    floors: (book.floors ?? []).map((_, i) => kept(i) ?? assessFloor(reader, i, options.format)),
  };
  keepReadings(assessment, reader.soFar);
  return assessment;
};
