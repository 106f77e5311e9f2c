import type { Book } from '../../book/index.ts';

/** Four hues that colour-blind readers tell apart; a fifth floor begins anew, its name beside it as always. */
const hues = 4;

/** The class that gives a floor its colour everywhere: by its place in the book, so that it never changes. */
export const floorClass = (book: Book, tag: string): string => {
  const place = (book.floors ?? []).findIndex((floor) => floor.tag === tag);
  return `floor-${Math.max(place, 0) % hues}`;
};
