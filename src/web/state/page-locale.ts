import { type Language, languages } from '../../text/index.ts';

export interface LocaleWishes {
  /** What the address asks for: to try a language out, or to show it to somebody. */
  readonly asked: string | null;
  /** What the person chose on this device; anything may stand there. */
  readonly chosen: unknown;
  readonly browser: string;
}

const isLocale = (text: string): boolean => {
  try {
    return Intl.getCanonicalLocales(text).length === 1;
  } catch {
    return false;
  }
};

const isLanguage = (value: unknown): value is Language => languages.some((one) => one === value);

/** The locale of the page: its numbers follow it whole, its words as far as there is a translation. */
export const pageLocale = ({ asked, chosen, browser }: LocaleWishes): string => {
  if (asked !== null && isLocale(asked)) return asked;
  // of the language that was chosen the browser may know the country, too
  if (isLanguage(chosen)) return browser.startsWith(chosen) ? browser : chosen;
  return isLocale(browser) ? browser : 'en';
};
