import type { Book } from './book.ts';
import { placeName } from './place-name.ts';

/** `freeAir` is read as `free air`. */
const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** A place in the book in words: `Larkmoor, run, 2 in run, bore`. */
export const placeText = (book: Book, path: string): string =>
  placeName(book, path)
    .map((part) => {
      if (part.is === 'thing') return part.name;
      return part.is === 'field' ? spaced(part.field) : `${spaced(part.of)} ${part.number}`;
    })
    .join(', ') || path;
