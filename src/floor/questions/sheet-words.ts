import type { Parts } from '../../text/index.ts';

/** What the question sheet asks of a catalogue of words. */
export interface SheetWords {
  readonly say: (key: string, parts?: Parts) => string;
  readonly has: (key: string) => boolean;
}

/** The word of a choice where the catalogue has one, else the choice as the book writes it. */
export const choiceWord = (words: SheetWords, choice: string): string =>
  words.has(`word.${choice}`) ? words.say(`word.${choice}`) : choice;
