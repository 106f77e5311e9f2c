import { type Book, kindAt, valueAt } from '../../book/index.ts';
import type { Verdict } from '../../floor/assessment.ts';
import type { FindingShift, FoundReading, PromisedAndFound, Touched } from '../../floor/found/index.ts';
import { figureName } from '../floors/verdict-text.ts';
import type { ShowOptions, Words } from '../words/words.ts';

/** More rows than these that keep their verdict and nobody reads on. */
const mostStill = 2;

/** From here on nobody thinks in per cent. */
const many = 3;

/** A moment by the clock and the marks of the reader. */
export const momentText = (words: Words, at: string): string =>
  new Intl.DateTimeFormat(words.numbers, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(at));

export const typedText = ({ value, spread }: FoundReading): string =>
  spread === undefined ? value : `${value} ± ${spread}`;

/** With what, beside how many others, under which conditions, by whom and when. */
export const circumstances = (words: Words, reading: FoundReading): string => {
  const { instrument, users, conditions, by, at } = reading;
  return [
    ...(instrument === undefined ? [] : [instrument]),
    ...(users === undefined ? [] : [words.say('found.users.drawing', { n: users })]),
    ...(conditions === undefined ? [] : [conditions]),
    words.say('found.read', { by, at: momentText(words, at) }),
  ].join('; ');
};

interface Range {
  readonly value?: number;
  readonly low?: number;
  readonly high?: number;
}

/** A value in the reader's units with the ends of its width. */
const rangeText = (
  words: Words,
  { kind }: PromisedAndFound,
  { value, low, high }: Range,
  show: ShowOptions,
): string | undefined => {
  if (kind === undefined || value === undefined) return undefined;
  const told = words.quantity(value, kind, show);
  if (low === undefined || high === undefined || low === high) return told.text;
  const end = (one: number) => words.quantity(one, kind, { ...show, unit: told.unit, digits: 3 }).number;
  return `${told.text} (${end(low)} … ${end(high)})`;
};

/** What stands at a place of the book, with who said it; nothing where nothing was said. */
export const promiseText = (words: Words, book: Book, path: string): string | undefined => {
  const there = valueAt(book, path);
  if (there === undefined) return undefined;
  const kind = kindAt(path);
  const by = (there as { by?: unknown }).by;
  const value = kind === undefined ? String(there) : words.entryText(there);
  return typeof by === 'string' ? words.say('found.said', { value, by }) : value;
};

/** The promise in the same units as what was found. */
export const promisedValue = (words: Words, one: PromisedAndFound, show: ShowOptions): string | undefined => {
  const { promised } = one;
  const value = promised && rangeText(words, one, promised, show);
  if (value === undefined) return undefined;
  return promised?.by === undefined ? value : words.say('found.said', { value, by: promised.by });
};

export const foundValue = (words: Words, one: PromisedAndFound, show: ShowOptions): string =>
  rangeText(words, one, one.found, show) ?? typedText(one.reading);

const sideText = (words: Words, verdict: Verdict, margin: number | undefined): string => {
  const said = words.say(`found.verdict.${verdict}`);
  if (margin === undefined) return said;
  // a share cannot be more than this of what must stay under a limit: it is of what must be reached
  const percent =
    margin >= many
      ? words.say('utilities.times', { n: Number((margin + 1).toPrecision(2)) })
      : `${margin > 0 ? '+' : ''}${words.percent(margin)}`;
  return words.say('found.side', { verdict: said, margin: percent }).replaceAll(' ', '\u00a0');
};

export interface ShiftLine {
  readonly id: string;
  readonly name: string;
  readonly change?: string;
  readonly turns: boolean;
}

const shiftLine = (words: Words, { id, from, to, marginFrom, marginTo }: FindingShift): ShiftLine => ({
  id,
  name: figureName(words, id),
  change: words.say('found.moved', {
    from: sideText(words, from, marginFrom),
    to: sideText(words, to, marginTo),
  }),
  turns: from !== to,
});

/** What a reading does to one part; of what keeps its verdict only the first few. */
export const shiftLines = (
  words: Words,
  { shifts }: PromisedAndFound,
  touches: Exclude<Touched, 'rate'>,
): readonly ShiftLine[] => {
  const own = shifts.filter((shift) => shift.touches === touches);
  const turned = own.filter(({ from, to }) => from !== to);
  const still = own.filter(({ from, to }) => from === to);
  const more = still.length - mostStill;
  const shown = [...turned, ...still.slice(0, more === 1 ? mostStill + 1 : mostStill)];
  return [
    ...shown.map((shift) => shiftLine(words, shift)),
    ...(more > 1 ? [{ id: '', name: words.say('found.more', { n: more }), turns: false }] : []),
  ];
};

export const rateMoved = (words: Words, one: PromisedAndFound, show: ShowOptions): string => {
  const text = (rate: number | undefined): string =>
    rate === undefined
      ? words.say('found.verdict.unknown')
      : words.quantity(rate, 'rate', { ...show, bottles: true }).text;
  const [from, to] = [text(one.rateFrom), text(one.rateTo)];
  return from === to ? words.say('found.still') : words.say('found.moved', { from, to });
};
