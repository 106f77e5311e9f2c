import type { Book } from '../../book/index.ts';
import { figureName } from '../floors/verdict-text.ts';
import type { Words } from '../words/words.ts';
import type { FloorReading, NextReading } from './next-readings.ts';

/** "the site's plumber: gauge at the tie-in ..." */
export const readingSentence = (words: Words, { whom, id }: NextReading): string =>
  words.say('ask.sentence', { whom: words.say(`ask.whom.${whom}`), how: words.say(`ask.how.${id}`) });

/** The place that a reading is about, and how many more of its kind it settles. */
export const readingPlace = (words: Words, book: Book, { paths }: NextReading): string => {
  const name = words.placeName(book, paths[0] ?? '');
  return paths.length < 2 ? name : words.say('ask.places', { name, n: paths.length - 1 });
};

export const findingNames = (words: Words, { findings }: FloorReading): string =>
  findings.map((id) => figureName(words, id)).join(', ');
