import {
  createContext,
  type ReactElement,
  type ReactNode,
  useCallback,
  useEffect,
  useMemo,
  useState,
} from 'react';
import {
  type Catalogue,
  type Language,
  languageOf,
  loadTranslation,
  type Translation,
} from '../../text/index.ts';
import type { Page } from '../state/page.ts';
import { PageContext } from '../state/page-context.ts';
import { makeWords } from '../words/words.ts';

/** How the page speaks: numbers by a locale, words by a translation where it is not English. */
export interface Speech {
  readonly locale: string;
  readonly translation: Translation | undefined;
}

/** The speech of a locale; English where its table cannot be fetched. */
export const speechOf = async (locale: string): Promise<Speech> => ({
  locale,
  translation: await loadTranslation(languageOf(locale)).catch(() => undefined),
});

/** The note of this browser that keeps the language. */
export const languageNote = 'language';

export const ChooseLanguageContext = createContext<(language: Language) => void>(() => undefined);

export interface InLanguageProps {
  readonly page: Page;
  readonly catalogue: Catalogue;
  readonly first: Speech;
  /** The locale of the page once a language was chosen. */
  readonly localeOf: (language: Language) => string;
  readonly children: (page: Page) => ReactNode;
}

/** The page in the language of its reader, who may choose another while it is open: nothing typed is lost. */
export const InLanguage = ({ page, catalogue, first, localeOf, children }: InLanguageProps): ReactElement => {
  const [speech, setSpeech] = useState(first);
  const { notes } = page;
  const choose = useCallback(
    (language: Language): void => {
      notes.write(languageNote, language);
      void speechOf(localeOf(language)).then((next) => {
        // another may have been chosen while the table came
        if (notes.read(languageNote) === language) setSpeech(next);
      });
    },
    [notes, localeOf],
  );
  useEffect(() => {
    document.documentElement.lang = speech.translation?.language ?? 'en';
  }, [speech]);
  const speaking = useMemo(
    () => ({ ...page, words: makeWords(catalogue, speech.locale, speech.translation) }),
    [page, catalogue, speech],
  );
  return (
    <PageContext value={speaking}>
      <ChooseLanguageContext value={choose}>{children(speaking)}</ChooseLanguageContext>
    </PageContext>
  );
};
