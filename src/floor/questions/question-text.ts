import { type Book, type PlacePart, placeName } from '../../book/index.ts';
import { placeAt } from '../../book/place-at.ts';
import { spaced } from '../../book/schema-words.ts';
import type { SheetWords } from './sheet-words.ts';

const partText = (part: PlacePart, words: SheetWords): string => {
  if (part.is === 'thing') return part.name;
  const key = part.is === 'field' ? part.field : part.of;
  const word = words.has(`field.${key}`) ? words.say(`field.${key}`) : spaced(key);
  return part.is === 'field' ? word : `${word} ${part.number}`;
};

const bare = (text: string): string => text.toLowerCase().replace(/\.$/, '');

/**
 * The question that asks for a place of the book: its name, then what the schema says that belongs there.
 *
 * Symbols  words  with those of `schemaWords`; the name of the floor is left out, since one floor is asked
 */
export const questionText = (book: Book, path: string, words: SheetWords): string => {
  const parts = placeName(book, path);
  const own = path.startsWith('/floors/') ? parts.slice(1) : parts;
  const name = own.map((part) => partText(part, words)).join(', ');
  const help = placeAt(book, path)?.help;
  const about = help !== undefined && words.has(help) ? words.say(help) : '';
  const asked = `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
  const last = own.at(-1);
  // `length: Length.` would say the same twice
  const saysNoMore = last !== undefined && bare(about) === bare(partText(last, words));
  return about === '' || saysNoMore ? asked : `${asked}: ${about}`;
};
