import { type Book, placeName } from '../book/index.ts';
import type { Figure } from '../floor/assessment.ts';
import { formatNumber, formatQuantity, type Kind, si, wholeDigits } from '../quantity/index.ts';
import { type UnitWishes, unitFor } from '../quantity/unit-choice.ts';
import { languageOf, type Parts, type Translation } from '../text/index.ts';
import { words } from './words.ts';

export interface Printed {
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

/** Everything that turns the data of one book into what stands on paper. */
export interface PaperWords {
  readonly book: Book;
  /** The locale that numbers and days follow. */
  readonly locale: string;
  /** What is said in place of the English; absent, the paper is English. */
  readonly translation: Translation | undefined;
  readonly say: (key: string, parts?: Parts) => string;
  /** What is said in place of an English text that stands outside the catalogue: names of a sheet's fields. */
  readonly inWords: (english: string) => string;
  readonly has: (key: string) => boolean;
  /** The words of a key where there are some, else what was given. */
  readonly sayOr: (key: string, otherwise: string, parts?: Parts) => string;
  readonly quantity: (value: number, kind: Kind, digits?: number) => Printed;
  /** A quantity of a utility: a ratio as per cent, a rate as what it is, not of bottles. */
  readonly utility: (value: number, kind: Kind) => string;
  /** The ends of an interval in the unit of its middle; nothing where they print alike. */
  readonly interval: (figure: Figure, digits?: number) => string | undefined;
  readonly percent: (share: number) => string;
  /** A bare number by the locale. */
  readonly number: (value: number, digits: number) => string;
  /** A day as the readers of the paper write one. */
  readonly day: (iso: string) => string;
  /** A moment to the minute, by the clock that it was written with. */
  readonly moment: (iso: string) => string;
  /** A place of the book in words. */
  readonly place: (path: string) => string;
  readonly name: (figure: string) => string;
  /** Name of a station, by its tag. */
  readonly station: (tag: string) => string;
}

const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** English writes year-month-day, which no reader takes for another; the others write it in their own order. */
const dayText = (iso: string, locale: string): string => {
  const at = new Date(`${iso}T00:00:00Z`);
  if (languageOf(locale) === 'en' || !/^\d{4}-\d{2}-\d{2}$/.test(iso) || Number.isNaN(at.getTime()))
    return iso;
  return new Intl.DateTimeFormat(locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(at);
};

/**
 * The words of a paper.
 *
 * Symbols  wishes       units of the reader
 *          locale       of numbers and days
 *          translation  what is said in place of the English
 */
export const makePaperWords = (
  book: Book,
  wishes: UnitWishes,
  locale: string,
  translation?: Translation,
): PaperWords => {
  const spoken = words.translated(translation);
  const language = translation?.language ?? 'en';
  const say = (key: string, parts?: Parts) => spoken.say(key, parts, language);
  const sayOr = (key: string, otherwise: string, parts?: Parts) =>
    spoken.has(key, language) ? say(key, parts) : otherwise;
  const unitOf = (kind: Kind, value: number) => unitFor(kind, value, wishes);
  const written = (value: number, kind: Kind, unit: string, digits?: number): Printed => {
    // whole bottles, however many digits the others take
    const whole = kind === 'rate' ? wholeDigits(value, kind, unit) : digits;
    const printed = formatQuantity(si(kind, value), kind, { locale, unit, digits: whole });
    if (kind !== 'rate' || !printed.unit.startsWith('/')) return printed;
    const bottles = say('paper.bottles', { per: printed.unit });
    return { number: printed.number, unit: bottles, text: `${printed.number}\u00a0${bottles}` };
  };
  return {
    book,
    locale,
    translation,
    say,
    inWords: (english) => translation?.texts.get(english) ?? english,
    has: (key) => spoken.has(key, language),
    sayOr,
    quantity: (value, kind, digits) => written(value, kind, unitOf(kind, value), digits),
    utility: (value, kind) => {
      if (kind === 'ratio') {
        return say('paper.percent', { n: formatNumber(value * 100, locale, 3) });
      }
      return formatQuantity(si(kind, value), kind, { locale, unit: unitOf(kind, value), digits: 3 }).text;
    },
    interval: ({ value, low, high, kind }, digits) => {
      if (value === undefined || low === undefined || high === undefined) return undefined;
      const unit = unitOf(kind, value);
      const [from, to] = [low, high].map((end) => written(end, kind, unit, digits).number);
      return from === to ? undefined : say('paper.interval', { low: from ?? '', high: to ?? '' });
    },
    percent: (share) =>
      say('paper.percent', { n: formatNumber(Number((share * 100).toPrecision(2)), locale, 2) }),
    number: (value, digits) => formatNumber(value, locale, digits),
    day: (iso) => dayText(iso, locale),
    moment: (iso) => [dayText(iso.slice(0, 10), locale), iso.slice(11, 16)].join(' ').trim(),
    place: (path) =>
      placeName(book, path)
        .map((part) => {
          if (part.is === 'thing') return part.name;
          if (part.is === 'field') return sayOr(`field.${part.field}`, spaced(part.field));
          return `${sayOr(`field.${part.of}`, spaced(part.of))} ${part.number}`;
        })
        .join(', ') || path,
    name: (figure) => sayOr(`figure.${figure}`, figure),
    station: (tag) => book.line?.stations?.find((one) => one.tag === tag)?.name ?? tag,
  };
};
