import type { Book } from '../book/index.ts';

/** Index of the floor that the line was built and timed on; -1 where the book has none. */
export const builtOn = (book: Book): number =>
  (book.floors ?? []).findIndex((floor) => floor.role === 'built on');
