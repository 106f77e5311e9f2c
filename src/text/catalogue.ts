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

/** Texts of one area by language: `{ en: { key: 'text with {parts}' } }`. */
export type Bundle = Readonly<Record<string, Readonly<Record<string, string>>>>;

export interface Catalogue {
  /** The sentence of a key in a language, English where the language has none, the key itself where nobody has. */
  readonly say: (key: string, parts?: Parts, locale?: string) => string;
  readonly has: (key: string, locale?: string) => boolean;
  /** Every key of a language, sorted. */
  readonly keys: (locale?: string) => readonly string[];
}

const fallback = 'en';

const localeOf = (locale: string): MessageLocale => {
  const rules = new Intl.PluralRules(locale === pseudoLocale ? fallback : locale);
  return { number: (value) => numberText(value, locale), plural: (value) => rules.select(value) };
};

/** `de-AT` is looked up as `de-AT`, then `de`, then English. */
const languages = (locale: string): readonly string[] => [locale, locale.split('-')[0] ?? locale, fallback];

/**
 * Joins bundles of texts into one catalogue. A later bundle wins where two hold the same key.
 *
 * Method   messages are cut once and kept; the pseudo language is made from English as it is asked for
 * Returns  `say`, `has`, `keys`
 * Cost     O(number of texts) once, O(length) for each sentence
 */
export const makeCatalogue = (bundles: readonly Bundle[]): Catalogue => {
  const texts = new Map<string, Map<string, string>>();
  for (const bundle of bundles) {
    for (const [language, entries] of Object.entries(bundle)) {
      const known = texts.get(language) ?? new Map<string, string>();
      for (const [key, text] of Object.entries(entries)) known.set(key, text);
      texts.set(language, known);
    }
  }
  const messages = new Map<string, Message>();
  const locales = new Map<string, MessageLocale>();
  const textOf = (key: string, locale: string): string | undefined => {
    for (const language of languages(locale)) {
      const text = texts.get(language)?.get(key);
      if (text !== undefined) return text;
    }
    return undefined;
  };
  const messageOf = (key: string, locale: string): Message | undefined => {
    const slot = `${locale} ${key}`;
    const kept = messages.get(slot);
    if (kept !== undefined) return kept;
    const text = textOf(key, locale);
    if (text === undefined) return undefined;
    const cut = parseMessage(text);
    const message = locale === pseudoLocale ? mapText(cut, accented) : cut;
    messages.set(slot, message);
    return message;
  };
  const kept = (locale: string): MessageLocale => {
    const known = locales.get(locale) ?? localeOf(locale);
    locales.set(locale, known);
    return known;
  };
  return {
    say: (key, parts = {}, locale = fallback) => {
      const message = messageOf(key, locale);
      if (message === undefined) return key;
      const written = writeMessage(message, parts, kept(locale));
      return locale === pseudoLocale ? bracketed(written) : written;
    },
    has: (key, locale = fallback) => textOf(key, locale) !== undefined,
    keys: (locale = fallback) => [...(texts.get(locale)?.keys() ?? [])].sort(),
  };
};

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
