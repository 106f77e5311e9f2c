import type { Book } from '../book/index.ts';
import type { PaperWords } from './paper-words.ts';
import { words } from './words.ts';
import type { Citations } from './workings/citations.ts';

export const pageSizes = ['a4', 'letter'] as const;
export type PageSize = (typeof pageSizes)[number];

/** What a paper is told besides the book. The date is handed in: a paper has no clock. */
export interface PaperOptions {
  /** Day of printing, as 2027-03-08. */
  readonly date: string;
  /** SHA-256 of the text of the book, hexadecimal. */
  readonly hash: string;
  /** Number of the book's revision, where it comes out of a store. */
  readonly revision?: number | undefined;
  /** The book's own where it is left out, else A4. */
  readonly page?: PageSize | undefined;
  /** Keeps what is cited where papers are bound together and the workings stand at the end of all. */
  readonly bound?: Citations | undefined;
}

/** Head and foot of every page. */
export interface PaperHead {
  readonly title: string;
  readonly book: string;
  /** The book's title, cut where it would run into the stamp. */
  readonly short: string;
  readonly stamp: string;
  readonly whole: string;
  readonly demonstration?: string;
  readonly caution: string;
  /** Said of a translation, in its language and in English. */
  readonly unreviewed?: string;
  readonly page: 'a4' | 'us-letter';
  readonly lang: string;
  readonly day: readonly [number, number, number];
}

/** Letters of a title that leave room for the stamp beside it on the narrower page. */
const roomForTitle = 34;
const roomForDemonstration = 110;

/** A text of at most so many letters. */
export const shortened = (text: string, most: number): string => {
  const letters = [...text];
  return letters.length <= most
    ? text
    : `${letters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
};

/** The size of page that a book names, else A4. */
export const pageOf = (book: Book): PageSize => (book.about?.paper === 'Letter' ? 'letter' : 'a4');

export const paperHead = (
  title: string,
  { date, hash, revision, page }: PaperOptions,
  { book, say, day, translation }: PaperWords,
): PaperHead => {
  const named = book.about?.title ?? say('paper.untitled');
  const [year = 2000, month = 1, dayOfMonth = 1] = date.split('-').map(Number);
  const { demonstration } = book.about ?? {};
  return {
    title,
    book: named,
    short: shortened(named, roomForTitle),
    stamp: [
      ...(revision === undefined ? [] : [say('paper.revision', { revision })]),
      day(date),
      say('paper.hash', { hash: hash.slice(0, 12) }),
    ].join(' · '),
    whole: say('paper.whole', { hash }),
    ...(demonstration === undefined ? {} : { demonstration: shortened(demonstration, roomForDemonstration) }),
    caution: say('paper.caution'),
    page: (page ?? pageOf(book)) === 'letter' ? 'us-letter' : 'a4',
    ...(translation === undefined
      ? {}
      : { unreviewed: [...new Set([say('paper.unreviewed'), words.say('paper.unreviewed')])].join(' · ') }),
    lang: translation?.language ?? 'en',
    day: [year, month, dayOfMonth],
  };
};

/** Who builds it for whom, its number: the line under the title of a paper's first page. */
export const subtitleOf = ({ book, say }: PaperWords, format?: string): string => {
  const { builder, customer, serial, title } = book.about ?? {};
  return [
    ...(title === undefined ? [] : [title]),
    ...(builder === undefined || customer === undefined ? [] : [say('paper.from', { builder, customer })]),
    ...(serial === undefined ? [] : [say('paper.serial', { serial })]),
    ...(format === undefined || format === '' ? [] : [say('paper.format', { format })]),
  ].join(', ');
};
