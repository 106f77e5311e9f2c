import type { Book } from '../book/index.ts';
import { type CheckSentences, checkSentences } from '../proof/index.ts';
import { formatNumber, formatQuantity, type Kind, si, wholeDigits } from '../quantity/index.ts';
import { shown, shownInterval } from '../quantity/shown.ts';
import { type UnitWishes, unitFor } from '../quantity/unit-choice.ts';
import type { Parts, Translation } from '../text/index.ts';
import type { ChosenMedia } from './choose-media.ts';
import { words } from './words.ts';

/** What every part of the file needs. */
export interface Telling {
  readonly book: Book;
  /** The language of the file; its numbers follow it. */
  readonly language: string;
  readonly say: (key: string, parts?: Parts) => string;
  readonly has: (key: string) => boolean;
  readonly checks: CheckSentences;
  readonly quantity: (value: number, kind: Kind, digits?: number) => string;
  readonly interval: (value: number, ends: readonly [number, number], kind: Kind) => string;
  readonly number: (value: number) => string;
  readonly media: ChosenMedia;
  /** Tries before those that the file shows, of checks that have such. */
  readonly triesLeft: ReadonlyMap<string, number>;
}

/** English, or what a translation says in its place. */
export const makeTelling = (
  book: Book,
  wishes: UnitWishes,
  media: ChosenMedia,
  translation: Translation | undefined,
  triesLeft: Telling['triesLeft'] = new Map(),
): Telling => {
  // a share is said in per cent
  const inPercent: UnitWishes = { ...wishes, byKind: { ratio: '%', ...wishes.byKind } };
  const language = translation?.language ?? 'en';
  const spoken = words.translated(translation);
  const say = (key: string, parts?: Parts): string => spoken.say(key, parts, language);
  const has = (key: string): boolean => spoken.has(key, language);
  const rate = (value: number): { readonly number: string; readonly text: string } => {
    const unit = unitFor('rate', value, inPercent);
    // whole bottles, however many digits the others take
    const digits = wholeDigits(value, 'rate', unit);
    const one = formatQuantity(si('rate', value), 'rate', { locale: language, unit, digits });
    return { number: one.number, text: `${one.number}\u00a0${say('witness.bottles', { per: one.unit })}` };
  };
  const rates = (value: number, [low, high]: readonly [number, number]): string => {
    const ends = [rate(low).number, rate(high).number];
    return ends[0] === ends[1] ? rate(value).text : `${rate(value).text} (${ends.join(' … ')})`;
  };
  const quantity = (value: number, kind: Kind, digits?: number): string =>
    kind === 'rate' ? rate(value).text : shown(value, kind, inPercent, language, digits);
  const number = (value: number): string => formatNumber(value, language, 2);
  return {
    book,
    language,
    say,
    has,
    quantity,
    number,
    interval: (value, ends, kind) =>
      kind === 'rate' ? rates(value, ends) : shownInterval(value, ends, kind, inPercent, language),
    checks: checkSentences(book, { say, has, quantity, number }),
    media,
    triesLeft,
  };
};
