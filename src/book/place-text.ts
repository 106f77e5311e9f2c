import type { Book } from './book.ts';
import { placeName } from './place-name.ts';
import { spacedName } from './spaced-name.ts';

/** A place in the book in words: `Larkmoor, run, 2 in run, bore`. */
export const placeText = (book: Book, path: string): string =>
  placeName(book, path)
    .map((part) => {
      if (part.is === 'thing') return part.name;
      return part.is === 'field' ? spacedName(part.field) : `${spacedName(part.of)} ${part.number}`;
    })
    .join(', ') || path;
