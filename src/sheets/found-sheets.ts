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

/**
 * The sheets in which every word of a text stands, all where there is none.
 *
 * Symbols  texts  by sheet, as `sheetSearchText` gives them
 */
export const foundSheets = (texts: ReadonlyMap<string, string>, wanted: string): ReadonlySet<string> => {
  const words = smallLetters(wanted).split(/\s+/).filter(Boolean);
  return new Set(
    [...texts].filter(([, text]) => words.every((word) => text.includes(word))).map(([id]) => id),
  );
};
