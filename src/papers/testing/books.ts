import { bookUnits } from '../../book/book-units.ts';
import { type Book, readBook } from '../../book/index.ts';
import type { Remedy } from '../../floor/assessment.ts';
import { assessBook } from '../../floor/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Typesetter } from '../frame/typst-compiler.ts';
import type { PageSize } from '../paper-head.ts';
import { makePaperWords } from '../paper-words.ts';
import { printPrediction } from '../print-prediction.ts';

export const hash = 'ab12cd34ef56'.padEnd(64, '0');
export const date = '2027-03-08';

export const bookOf = (text: string): Book => {
  const book = readBook(text);
  if (!book.ok) throw new Error(JSON.stringify(book.problems));
  return book.value;
};

export interface Printing {
  readonly page?: PageSize;
  readonly system?: UnitSystem;
  readonly remedies?: readonly Remedy[];
  readonly revision?: number;
}

/** The prediction of a book, as a door would ask for it. */
export const predictionOf = (
  book: Book,
  typesetter: Typesetter,
  { page = 'a4', system, remedies = [], revision }: Printing = {},
): Uint8Array =>
  printPrediction(
    assessBook(book),
    remedies,
    { date, hash, page, revision },
    makePaperWords(book, bookUnits(book, system), 'en'),
    typesetter,
  );
