import { type Language, languages } from '../text/index.ts';
import type { Book } from './book.ts';

/** The languages that a paper of a book can be printed in: first those that the book names, then the others. */
export const paperLanguages = ({ about }: Book): readonly [Language, ...Language[]] => {
  const named = (about?.languages ?? []).map((tag) => tag.toLowerCase().split('-')[0]);
  const first = named.flatMap((tag) => languages.filter((one) => one === tag));
  return [...new Set([...first, ...languages])] as unknown as readonly [Language, ...Language[]];
};
