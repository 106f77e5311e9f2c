import type { Bundle } from '../catalogue.ts';
import { figureWords, verdictWords } from './figures.text.ts';
import { floorNoteWords, holdWords, leverWords } from './hold.text.ts';

/** Words of the first figures of a floor; those of its utilities are many and stand apart. */
export const firstWords: readonly Bundle[] = [
  figureWords,
  verdictWords,
  holdWords,
  leverWords,
  floorNoteWords,
];
