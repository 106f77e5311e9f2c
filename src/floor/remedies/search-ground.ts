import type { Book } from '../../book/index.ts';
import type { ReadBefore } from '../book-reader.ts';
import { allFindings, type BookFindings } from './harms.ts';

/** What all searches over one book share. */
export interface SearchGround {
  /** Every finding as it stands, worked out when the first remedy is found. */
  readonly all: () => BookFindings;
  /** What has been read of the book, once that was done. */
  readonly read: () => ReadBefore | undefined;
}

export const searchGround = (book: Book, format: string | undefined): SearchGround => {
  let found: BookFindings | undefined;
  return {
    all: () => {
      found ??= allFindings(book, format);
      return found;
    },
    read: () => found?.read,
  };
};
