import type { Bundle } from '../catalogue.ts';
import { firstWords } from './first-words.ts';
import { utilityWords } from './utilities.text.ts';

/** Words that every door shares: names of figures, verdicts, holds, levers. */
export const sharedWords: readonly Bundle[] = [...firstWords, utilityWords];
