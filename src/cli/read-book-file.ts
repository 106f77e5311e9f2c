import { type Book, readBook, restOfBook } from '../book/index.ts';
import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { readText } from './read-text.ts';
import type { World } from './world.ts';

export type BookFile =
  | Result<Book>
  /** The file is text, but no book. */
  | {
      readonly ok: false;
      readonly problems: readonly Problem[];
      readonly inBook: true;
      /** The book without what is wrong in it, where one is left. */
      readonly rest?: Book;
    };

/** A book out of its text, or everything that is wrong with it. */
export const bookOf = (text: string): BookFile => {
  const book = readBook(text);
  if (book.ok) return accept(book.value);
  const rest = restOfBook(text, book.problems);
  return { ...book, inBook: true, ...(rest === undefined ? {} : { rest }) };
};

/** A book out of a file or standard input. */
export const readBookFile = async (path: string, world: World): Promise<BookFile> => {
  const text = await readText(path, world);
  return text.ok ? bookOf(text.value) : text;
};

/** Says of which file the problems are: their own paths are places inside it. */
export const headingOf = (path: string, file: BookFile): string | undefined =>
  file.ok || !('inBook' in file) ? undefined : path;

/** The book, or what is left of it without what is wrong. */
export const bookIn = (file: BookFile): Book | undefined =>
  file.ok ? file.value : 'inBook' in file ? file.rest : undefined;
