import { type Book, placeName } from '../book/index.ts';
import type { Figure } from '../floor/assessment.ts';
import { formatNumber, formatQuantity, fromSi, type Kind, si } from '../quantity/index.ts';
import { type UnitWishes, unitFor } from '../quantity/unit-choice.ts';
import type { Parts } from '../text/index.ts';
import { words } from './words.ts';

export interface Printed {
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

/** Everything that turns the data of one book into what stands on paper. */
export interface PaperWords {
  readonly book: Book;
  readonly say: (key: string, parts?: Parts) => string;
  /** The words of a key where there are some, else what was given. */
  readonly sayOr: (key: string, otherwise: string, parts?: Parts) => string;
  readonly quantity: (value: number, kind: Kind, digits?: number) => Printed;
  /** A quantity of a utility: a ratio as per cent, a rate as what it is, not of bottles. */
  readonly utility: (value: number, kind: Kind) => string;
  /** The ends of an interval in the unit of its middle; nothing where they print alike. */
  readonly interval: (figure: Figure, digits?: number) => string | undefined;
  readonly percent: (share: number) => string;
  /** A place of the book in words. */
  readonly place: (path: string) => string;
  readonly name: (figure: string) => string;
  /** Name of a station, by its tag. */
  readonly station: (tag: string) => string;
}

const spaced = (key: string): string => key.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

export const makePaperWords = (book: Book, wishes: UnitWishes, locale: string): PaperWords => {
  const say = (key: string, parts?: Parts) => words.say(key, parts, locale);
  const sayOr = (key: string, otherwise: string, parts?: Parts) =>
    words.has(key) ? say(key, parts) : otherwise;
  const unitOf = (kind: Kind, value: number) => unitFor(kind, value, wishes);
  const written = (value: number, kind: Kind, unit: string, digits?: number): Printed => {
    // whole bottles, however many digits the others take
    const whole =
      kind === 'rate'
        ? Math.max(3, Math.round(fromSi(si(kind, value), kind, unit)).toString().length)
        : digits;
    const printed = formatQuantity(si(kind, value), kind, { locale, unit, digits: whole });
    if (kind !== 'rate' || !printed.unit.startsWith('/')) return printed;
    const bottles = say('paper.bottles', { per: printed.unit });
    return { number: printed.number, unit: bottles, text: `${printed.number}\u00a0${bottles}` };
  };
  return {
    book,
    say,
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
    place: (path) =>
      placeName(book, path)
        .map((part) => {
          if (part.is === 'thing') return part.name;
          if (part.is === 'field') return sayOr(`field.${part.field}`, spaced(part.field));
          return `${spaced(part.of)} ${part.number}`;
        })
        .join(', ') || path,
    name: (figure) => sayOr(`figure.${figure}`, figure),
    station: (tag) => book.line?.stations?.find((one) => one.tag === tag)?.name ?? tag,
  };
};
