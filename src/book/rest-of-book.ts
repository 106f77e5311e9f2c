import type { Problem } from '../quantity/problem.ts';
import type { Book } from './book.ts';
import { readJsonText } from './json-text.ts';
import { tryPatches } from './patch-book.ts';
import { readBook } from './read-book.ts';

/** What is taken out may have been wanted by something else, which then goes too. */
const rounds = 4;

/**
 * What is left of a book when everything that can't be read is taken out of it: one bad value hides no answer that does
 * not rest on it.
 *
 * Symbols  text      of the file
 *          problems  as `readBook` gave them
 * Returns  undefined where no book is left: the text is no JSON, or what is wrong holds the whole together
 */
export const restOfBook = (text: string, problems: readonly Problem[]): Book | undefined => {
  const data = readJsonText(text.startsWith('\ufeff') ? text.slice(1) : text);
  if (!data.ok) return undefined;
  let rest = data.value as Book;
  let wrong = problems;
  for (let round = 0; round < rounds; round++) {
    const places = [...new Set(wrong.map(({ path }) => path))];
    if (places.includes('') || places.includes('/twinfloor')) return undefined;
    // a list's later members first, so that the places of the earlier ones stay what they are
    const last = places.sort((a, b) => b.localeCompare(a, 'en', { numeric: true }));
    rest = tryPatches(
      rest,
      last.map((path) => ({ path, value: undefined })),
    );
    const read = readBook(rest);
    if (read.ok) return read.value;
    wrong = read.problems;
  }
  return undefined;
};
