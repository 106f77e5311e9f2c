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
      readonly text: string;
    };

/** A book out of its text, or everything that is wrong with it. */
export const bookOf = (text: string): BookFile => {
  const book = readBook(text);
  return book.ok ? accept(book.value) : { ...book, inBook: true, text };
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
  file.ok ? file.value : 'inBook' in file ? restOfBook(file.text, file.problems) : undefined;
