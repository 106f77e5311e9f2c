import type { Book } from '../../book/index.ts';
import type { Parts } from '../../text/index.ts';
import { settingWords } from './setting-words.ts';
import { settingsOfBook } from './settings-of-book.ts';

/**
 * What each setting of a book is called, with the bottle that it is for where there is one for each.
 *
 * Symbols  say  in a catalogue that holds the words of the settings
 * Returns  its name by its id; the id where the book has no such setting any more
 * Cost     O(settings) once, when the first is asked for
 */
export const settingNames = (
  book: Book,
  say: (key: string, parts?: Parts) => string,
): ((id: string) => string) => {
  let names: ReadonlyMap<string, string> | undefined;
  const named = (): ReadonlyMap<string, string> => {
    const { name } = settingWords(book, say, 'en');
    return new Map(
      settingsOfBook(book).map((row) => {
        const format = book.line?.formats?.find(({ tag }) => tag === row.format)?.name ?? row.format;
        return [row.id, format === undefined ? name(row) : say('setting.for', { what: name(row), format })];
      }),
    );
  };
  return (id) => {
    names ??= named();
    return names.get(id) ?? id;
  };
};
