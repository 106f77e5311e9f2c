/** The languages that pages and papers speak, English first: it is the one that the others are made from. */
export const languages = ['en', 'de', 'es', 'fr'] as const;
export type Language = (typeof languages)[number];

/** Each by the name that its own readers look for. */
export const languageNames: Readonly<Record<Language, string>> = {
  en: 'English',
  de: 'Deutsch',
  es: 'Español',
  fr: 'Français',
};

/** The language of a locale: `de` for `de-AT`, English where it is none of ours. */
export const languageOf = (locale: string): Language =>
  languages.find((one) => one === locale.toLowerCase().split(/[-_]/)[0]) ?? 'en';
