import type { Bundle } from '../catalogue.ts';
import { figureWords, verdictWords } from './figures.text.ts';
import { floorNoteWords, holdWords, leverWords } from './hold.text.ts';
import { utilityWords } from './utilities.text.ts';

/** Words that every door shares: names of figures, verdicts, holds, levers. */
export const sharedWords: readonly Bundle[] = [
  figureWords,
  verdictWords,
  holdWords,
  leverWords,
  floorNoteWords,
  utilityWords,
];
