import {
  type Message,
  type MessageLocale,
  mapText,
  type Parts,
  parseMessage,
  writeMessage,
} from './message.ts';
import { numberText } from './number-text.ts';
import { accented, bracketed, pseudoLocale } from './pseudo.ts';
import type { Translation } from './translation.ts';

/** Texts of one area by language: `{ en: { key: 'text with {parts}' } }`. */
export type Bundle = Readonly<Record<string, Readonly<Record<string, string>>>>;

export interface Catalogue {
  /** The sentence of a key in a language, English where the language has none, the key itself where nobody has. */
  readonly say: (key: string, parts?: Parts, locale?: string) => string;
  readonly has: (key: string, locale?: string) => boolean;
  /** Every key of a language, sorted. */
  readonly keys: (locale?: string) => readonly string[];
  /** The same texts, spoken in the language of a translation as far as that goes. */
  readonly translated: (translation: Translation | undefined) => Catalogue;
  /** The same with more texts, which win where both hold a key; those that were there are not gone through again. */
  readonly with: (bundles: readonly Bundle[]) => Catalogue;
}

const fallback = 'en';

/** Of a language that the program does not know, the rules would be those of the machine. */
const isKnown = (language: string): boolean => Intl.PluralRules.supportedLocalesOf(language).length > 0;

/** Numbers follow the reader, plural forms the language that the sentence is in. */
const localeOf = (locale: string, language: string): MessageLocale => {
  const rules = new Intl.PluralRules(isKnown(language) ? language : fallback);
  const numbers = isKnown(locale) || locale === pseudoLocale ? locale : fallback;
  return { number: (value) => numberText(value, numbers), plural: (value) => rules.select(value) };
};

/** `de-AT` is looked up as `de-AT`, then `de`, then English. */
const languages = (locale: string): readonly string[] => [locale, locale.split('-')[0] ?? locale, fallback];

type Texts = ReadonlyMap<string, ReadonlyMap<string, string>>;

const textsOf = (bundles: readonly Bundle[]): Texts => {
  const texts = new Map<string, Map<string, string>>();
  for (const bundle of bundles) {
    for (const [language, entries] of Object.entries(bundle)) {
      const known = texts.get(language) ?? new Map<string, string>();
      for (const [key, text] of Object.entries(entries)) known.set(key, text);
      texts.set(language, known);
    }
  }
  return texts;
};

interface Found {
  readonly text: string;
  readonly language: string;
}

interface Cut extends MessageLocale {
  readonly message: Message;
}

/** A catalogue of texts in layers, the first of which wins. */
const catalogueOf = (layers: readonly Texts[], translation: Translation | undefined): Catalogue => {
  const textIn = (language: string, key: string): string | undefined => {
    for (const texts of layers) {
      const text = texts.get(language)?.get(key);
      if (text !== undefined) return text;
    }
    return undefined;
  };
  const found = (key: string, locale: string): Found | undefined => {
    const english = textIn(fallback, key);
    for (const language of languages(locale)) {
      const own = textIn(language, key);
      const text =
        own === undefined && language === translation?.language && english !== undefined
          ? translation.texts.get(english)
          : own;
      if (text !== undefined) return { text, language };
    }
    return undefined;
  };
  const locales = new Map<string, MessageLocale>();
  const localeFor = (locale: string, language: string): MessageLocale => {
    const slot = `${locale} ${language}`;
    const known = locales.get(slot) ?? localeOf(locale, language);
    locales.set(slot, known);
    return known;
  };
  const cuts = new Map<string, Cut>();
  const cutOf = (key: string, locale: string): Cut | undefined => {
    const slot = `${locale} ${key}`;
    const kept = cuts.get(slot);
    if (kept !== undefined) return kept;
    const one = found(key, locale);
    if (one === undefined) return undefined;
    const whole = parseMessage(one.text);
    const message = locale === pseudoLocale ? mapText(whole, accented) : whole;
    const cut = { message, ...localeFor(locale, one.language) };
    cuts.set(slot, cut);
    return cut;
  };
  return {
    say: (key, parts = {}, locale = fallback) => {
      const cut = cutOf(key, locale);
      if (cut === undefined) return key;
      const written = writeMessage(cut.message, parts, cut);
      return locale === pseudoLocale ? bracketed(written) : written;
    },
    has: (key, locale = fallback) => found(key, locale) !== undefined,
    keys: (locale = fallback) =>
      [...new Set(layers.flatMap((texts) => [...(texts.get(locale)?.keys() ?? [])]))].sort(),
    translated: (other) => catalogueOf(layers, other),
    with: (bundles) => catalogueOf([textsOf(bundles), ...layers], translation),
  };
};

/**
 * Joins bundles of texts into one catalogue. A later bundle wins where two hold the same key.
 *
 * Method   messages are cut once and kept; the pseudo language is made from English as it is asked for, and a
 *          translation is looked up by the English text, so that it lapses when the English changes
 * Returns  `say`, `has`, `keys`, `translated`, `with`
 * Cost     O(number of texts) once, O(length) for each sentence
 */
export const makeCatalogue = (bundles: readonly Bundle[]): Catalogue =>
  catalogueOf([textsOf(bundles)], undefined);

/** Puts a prefix before every key of a bundle: `problem.` before the codes of a folder's problems. */
export const prefixed = (prefix: string, bundle: Bundle): Bundle =>
  Object.fromEntries(
    Object.entries(bundle).map(([language, entries]) => [
      language,
      Object.fromEntries(Object.entries(entries).map(([key, text]) => [prefix + key, text])),
    ]),
  );

/** A tree of words (a sheet's title, inputs, outputs, notes) as flat keys joined by dots. */
export const flattened = (prefix: string, tree: Readonly<Record<string, unknown>>): Bundle =>
  Object.fromEntries(
    Object.entries(tree).map(([language, branch]) => {
      const flat: Record<string, string> = {};
      const walk = (at: string, node: unknown): void => {
        if (typeof node === 'string') flat[at] = node;
        else if (node !== null && typeof node === 'object') {
          for (const [key, child] of Object.entries(node)) walk(at === '' ? key : `${at}.${key}`, child);
        }
      };
      walk(prefix, branch);
      return [language, flat];
    }),
  );
