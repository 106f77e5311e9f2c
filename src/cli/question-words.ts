import { schemaWords } from '../book/schema-words.ts';
import { isHeadedBy, questionSheetWords, type SheetWords } from '../floor/questions/index.ts';
import type { Tab } from '../table/index.ts';
import {
  fieldWords,
  type Language,
  languages,
  loadTranslation,
  makeCatalogue,
  type Parts,
} from '../text/index.ts';

const english = makeCatalogue([schemaWords(), fieldWords, questionSheetWords]);

/** Words of the questions themselves: names of fields, and what the schema of the book says of each. */
export const questionWords: SheetWords = english;

/** The same in a language, in which a sheet can go out and come back. */
export const questionWordsIn = async (language: Language): Promise<SheetWords> => {
  const spoken = english.translated(await loadTranslation(language));
  return {
    say: (key, parts?: Parts) => spoken.say(key, parts, language),
    has: (key) => spoken.has(key, language),
  };
};

/** Words of the language whose headings stand in a sheet; English where none of ours do. */
export const questionWordsOf = async (tabs: readonly Tab[]): Promise<SheetWords> => {
  for (const language of languages) {
    const words = await questionWordsIn(language);
    if (isHeadedBy(tabs, words)) return words;
  }
  return questionWords;
};
