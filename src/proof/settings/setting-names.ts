import type { Book } from '../../book/index.ts';
import { onDemand } from '../../floor/on-demand.ts';
import type { Parts } from '../../text/index.ts';
import type { SettingRow } from './setting-row.ts';
import { type SettingWords, settingWords } from './setting-words.ts';
import { settingsOfBook } from './settings-of-book.ts';

type Say = (key: string, parts?: Parts) => string;

/** What a setting is called, with the bottle that it is for where there is one for each. */
export const settingName = (row: SettingRow, { name }: SettingWords, book: Book, say: Say): string => {
  const format = book.line?.formats?.find(({ tag }) => tag === row.format)?.name ?? row.format;
  return format === undefined ? name(row) : say('setting.for', { what: name(row), format });
};

/**
 * What each setting of a book is called, by its id.
 *
 * Symbols  say  in a catalogue that holds the words of the settings
 * Returns  its name; the id where the book has no such setting any more
 * Cost     O(settings) once, when the first is asked for
 */
export const settingNames = (book: Book, say: Say): ((id: string) => string) => {
  const names = onDemand(() => {
    const words = settingWords(book, say, 'en');
    return new Map(settingsOfBook(book).map((row) => [row.id, settingName(row, words, book, say)]));
  });
  return (id) => names().get(id) ?? id;
};
