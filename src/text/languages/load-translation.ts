import type { Translation } from '../translation.ts';
import type { Language } from './languages.ts';

type Table = Readonly<Record<string, string>>;

// each table comes when its first reader does: readers of English load none
const tables: Readonly<Record<Exclude<Language, 'en'>, () => Promise<readonly Table[]>>> = {
  de: () => import('./de/index.ts').then(({ de }) => de),
  es: () => import('./es/index.ts').then(({ es }) => es),
  fr: () => import('./fr/index.ts').then(({ fr }) => fr),
};

/** What a language says in place of the English; nothing for English itself. */
export const loadTranslation = async (language: Language): Promise<Translation | undefined> => {
  if (language === 'en') return undefined;
  const own = await tables[language]();
  return { language, texts: new Map(own.flatMap((table) => Object.entries(table))) };
};
