import type { Table, TableCell } from '../../table/index.ts';
import { type Language, languageNames, type Translation } from '../../text/index.ts';
import { besideText } from './beside.text.ts';

const say = (key: string): string => besideText.en?.[key] ?? key;

/** Headings by which a sheet that comes back is read. */
export const wordHeadings = {
  english: say('wordSheet.english'),
  translation: say('wordSheet.translation'),
} as const;

const label = (text: string): TableCell => ({ text });

/**
 * The sheet in which somebody supplies the words of a language: the English, what is held here, and room to write.
 *
 * Symbols  texts  English messages, each once
 *          held   of a language that is held here, to be looked at and bettered
 */
export const wordTable = (texts: readonly string[], held: Translation | undefined): Table => ({
  name: say('wordSheet.name'),
  lead: [say('wordSheet.lead'), say('wordSheet.lead.language')],
  columns: [
    { heading: wordHeadings.english, width: 70 },
    ...(held === undefined ? [] : [{ heading: languageNames[held.language as Language], width: 70 }]),
    { heading: wordHeadings.translation, width: 70 },
  ],
  rows: texts.map((english) => [
    label(english),
    ...(held === undefined ? [] : [label(held.texts.get(english) ?? '')]),
    { text: '', open: true },
  ]),
});
