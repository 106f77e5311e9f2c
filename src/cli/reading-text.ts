import type { Book } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { FoundReading, Laid } from '../floor/found/index.ts';
import { words } from './words.ts';

/** `2027-04-19T09:10:00Z` as a person reads it. */
export const momentText = (at: string): string =>
  at.replace(
    /^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::[\d.]+)?(.*)$/,
    (_, day: string, time: string, zone: string) => [day, time, zone === 'Z' ? 'UTC' : zone].join(' '),
  );

/** What was typed, with its spread. */
export const typedText = ({ value, spread }: FoundReading): string =>
  spread === undefined ? value : `${value} ± ${spread}`;

/** With what, beside how many others, under which conditions, by whom and when. */
export const circumstances = ({ instrument, users, conditions, by, at }: FoundReading): string =>
  [
    ...(instrument === undefined ? [] : [instrument]),
    ...(users === undefined ? [] : [words.say('found.users', { n: users })]),
    ...(conditions === undefined ? [] : [conditions]),
    words.say('found.by', { by, at: momentText(at) }),
  ].join('; ');

export const laidLine = (book: Book, { path, reading }: Laid): string =>
  words.say('found.laid', {
    place: placeText(book, path),
    value: typedText(reading),
    how: circumstances(reading),
  });
