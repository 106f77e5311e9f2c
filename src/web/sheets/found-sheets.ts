import type { Sheet } from '../../sheets/frame.ts';
import { smallLetters } from '../../text/small-letters.ts';

/** What a sheet is found by: its name, what it says of itself, what comes out of it, and whom it has it from. */
export const sheetText = (sheet: Sheet, say: (key: string) => string): string =>
  smallLetters(
    [
      sheet.id,
      say(`sheet.${sheet.id}.title`),
      say(`sheet.${sheet.id}.about`),
      ...Object.keys(sheet.outputs).map((name) => say(`sheet.${sheet.id}.outputs.${name}`)),
      ...sheet.sources.flatMap(({ title, edition, place }) => [title, edition ?? '', place ?? '']),
    ].join('\n'),
  );

/**
 * The sheets in which every word of a text stands, all where there is none.
 *
 * Symbols  texts  by sheet, as `sheetText` gives them
 */
export const foundSheets = (texts: ReadonlyMap<string, string>, wanted: string): ReadonlySet<string> => {
  const words = smallLetters(wanted).split(/\s+/).filter(Boolean);
  return new Set(
    [...texts].filter(([, text]) => words.every((word) => text.includes(word))).map(([id]) => id),
  );
};
