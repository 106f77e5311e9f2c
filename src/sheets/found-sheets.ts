import { smallLetters } from '../text/small-letters.ts';
import type { Sheet } from './frame.ts';

/** What people call a sheet, in one language. */
export interface SheetNames {
  readonly title: string;
  readonly about: string;
  readonly outputs: readonly string[];
}

/** What a sheet is found by: its name, what it says of itself, what comes out of it, and whom it has it from. */
export const sheetSearchText = ({ id, sources }: Sheet, { title, about, outputs }: SheetNames): string =>
  smallLetters(
    [
      id,
      title,
      about,
      ...outputs,
      ...sources.flatMap(({ title: name, edition, place }) => [name, edition ?? '', place ?? '']),
    ].join('\n'),
  );

const letter = /[\p{L}\p{N}]/u;

const beginsWordOf = (text: string, word: string): boolean => {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    if (at === 0 || !letter.test(text[at - 1]!)) return true;
  }
  return false;
};

/**
 * The sheets in which every word of a text stands, all where there is none.
 *
 * Method   words that begin a word of the sheet; where none has them all so, words that stand anywhere in it
 * Symbols  texts  by sheet, as `sheetSearchText` gives them
 */
export const foundSheets = (texts: ReadonlyMap<string, string>, wanted: string): ReadonlySet<string> => {
  const words = smallLetters(wanted).split(/\s+/).filter(Boolean);
  const idsWhere = (stands: (text: string, word: string) => boolean): ReadonlySet<string> =>
    new Set([...texts].filter(([, text]) => words.every((word) => stands(text, word))).map(([id]) => id));
  const begun = idsWhere(beginsWordOf);
  return begun.size > 0 ? begun : idsWhere((text, word) => text.includes(word));
};
