import type { Book } from '../../book/index.ts';
import type { Remedy, RemedyChange } from '../../floor/assessment.ts';
import { formatQuantity, handwritten, type Kind, type Problem, si } from '../../quantity/index.ts';
import { type Catalogue, numberText, type Parts, type Translation } from '../../text/index.ts';
import { problemSentence } from '../../text/problem-sentence.ts';
import type { UnitChoice } from '../state/page-state.ts';
import { fieldName, placeName, thingName } from './place-name.ts';
import { unitFor } from './unit-choice.ts';

export interface Shown {
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

export interface ShowOptions {
  readonly units: UnitChoice;
  readonly book?: Book | undefined;
  readonly unit?: string | undefined;
  readonly digits?: number | undefined;
  /** A rate of bottles says so: `1 050 bottles/h`. */
  readonly bottles?: boolean;
}

/** Everything that turns data into what a person reads, in the language and with the marks of one locale. */
export interface Words {
  readonly locale: string;
  /** What is said in place of the English; absent, the page speaks English. */
  readonly translation: Translation | undefined;
  /** The locale that numbers follow. */
  readonly numbers: string;
  readonly say: (key: string, parts?: Parts) => string;
  readonly has: (key: string) => boolean;
  readonly number: (value: number, digits?: number) => string;
  /** A share as per cent, two digits: nobody orders a pipe by the third. */
  readonly percent: (share: number) => string;
  readonly readNumber: (text: string) => number | undefined;
  readonly quantity: (value: number, kind: Kind, options: ShowOptions) => Shown;
  /** A quantity of the book as one would type it. */
  readonly entryText: (value: unknown) => string;
  readonly fieldName: (path: string) => string;
  readonly thingName: (book: Book, path: string) => string;
  readonly placeName: (book: Book, path: string) => string;
  readonly leverName: (book: Book, remedy: Remedy) => string;
  readonly remedyAnswer: (remedy: Remedy) => string;
  readonly remedyText: (book: Book, remedy: Remedy) => string;
  readonly problem: (problem: Problem) => string;
  readonly note: (note: { readonly code: string; readonly parts?: Parts }) => string;
}

const decimalMark = (locale: string): string =>
  new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === 'decimal')?.value ?? '.';

/** `"5 bar"`, `{ value, spread }` or `{ value: [low, high] }` of a book as one line of text. */
export const entryText = (value: unknown): string => {
  if (value === undefined || value === null) return '';
  if (typeof value !== 'object') return handwritten(String(value));
  const { value: inner, spread } = value as { value?: unknown; spread?: unknown };
  if (Array.isArray(inner)) return handwritten(inner.map(String).join(' to '));
  if (inner === undefined) return '';
  return handwritten(spread === undefined ? String(inner) : `${String(inner)} ± ${String(spread)}`);
};

/** Kinds that a problem names are said in words. */
const withKinds = (
  problem: Problem,
  say: (key: string) => string,
  has: (key: string) => boolean,
): Problem => {
  const parts = Object.entries(problem.parts ?? {}).map(([name, part]) => [
    name,
    has(`kind.${part}`) ? say(`kind.${part}`) : part,
  ]);
  return { ...problem, parts: Object.fromEntries(parts) };
};

export const makeWords = (english: Catalogue, locale: string, translation?: Translation): Words => {
  const catalogue = english.translated(translation);
  const numbers = locale === 'qps' ? 'en' : locale;
  const say = (key: string, parts?: Parts) => catalogue.say(key, parts, locale);
  const has = (key: string) => catalogue.has(key, locale);
  const mark = decimalMark(numbers);
  const place = (book: Book, path: string) => placeName(book, path, say, has);
  const turned = (change: RemedyChange): string => {
    const key = `lever.${change.lever}`;
    return has(key) ? say(key) : change.lever;
  };
  const leverName = (book: Book, remedy: Remedy): string => {
    const [first, second] = remedy.changes;
    if (first === undefined) {
      const key = `lever.alone.${remedy.lever}`;
      return has(key) ? say(key) : place(book, remedy.path);
    }
    if (second === undefined) return turned(first);
    return say('remedy.pair', { first: turned(first), answer: first.text, second: turned(second) });
  };
  const remedyAnswer = (remedy: Remedy): string => handwritten(remedy.changes.at(-1)?.text ?? '');
  return {
    locale,
    translation,
    numbers,
    say,
    has,
    number: (value, digits = 4) => numberText(value, locale, digits),
    percent: (share) => say('percent', { n: Number((share * 100).toPrecision(2)) }),
    readNumber: (text) => {
      const plain = text
        .replace(/[\s\u202f\u00a0']/g, '')
        .replace(mark, '.')
        .replace('\u2212', '-');
      const value = plain === '' ? Number.NaN : Number(plain);
      return Number.isFinite(value) ? value : undefined;
    },
    quantity: (value, kind, { units, book, unit, digits, bottles }) => {
      const names = (book?.about?.units ?? {}) as Readonly<Record<string, string>>;
      const chosen = unit ?? unitFor(kind, value, units, names, book?.about?.system);
      const written = formatQuantity(si(kind, value), kind, {
        locale: numbers,
        ...(chosen === undefined ? {} : { unit: chosen }),
        ...(digits === undefined ? {} : { digits }),
      });
      if (bottles !== true || kind !== 'rate' || !written.unit.startsWith('/')) return written;
      const per = say('unit.bottles', { per: written.unit });
      return { number: written.number, unit: per, text: `${written.number}\u00a0${per}` };
    },
    entryText,
    fieldName: (path) => fieldName(path, say, has),
    thingName,
    placeName: place,
    leverName,
    remedyAnswer,
    remedyText: (book, remedy) =>
      say('remedy.text', { lever: leverName(book, remedy), answer: remedyAnswer(remedy) }),
    problem: (problem) => {
      const told = { ...problem, path: fieldName(problem.path, say, has) };
      if (!has(problem.code)) {
        return say('problem.other', { path: told.path, code: problem.code });
      }
      return problemSentence(catalogue, withKinds(told, say, has), locale);
    },
    note: ({ code, parts }) => (has(code) ? say(code, parts) : say('note.other', { code })),
  };
};

/** The same speech with the words of another catalogue. */
export const wordsOf = (
  catalogue: Catalogue,
  { locale, translation }: Pick<Words, 'locale' | 'translation'>,
): Words => makeWords(catalogue, locale, translation);
