import type { Book } from './book.ts';

/**
 * The text of a book, as it is stored: its own keys in their order, its own units, two spaces, one newline.
 *
 * Cost     O(size of the book)
 */
export const writeBook = (book: Book): string => `${JSON.stringify(book, null, 2)}\n`;
