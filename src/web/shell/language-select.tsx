import { type ReactElement, useContext } from 'react';
import { type Language, languageNames, languages } from '../../text/index.ts';
import { useWords } from '../state/page-context.ts';
import { ChooseLanguageContext } from './in-language.tsx';

/** The languages of the pages, each by its own name, and whether somebody has read the translation through. */
export const LanguageSelect = (): ReactElement => {
  const { say, translation } = useWords();
  const choose = useContext(ChooseLanguageContext);
  return (
    <div className="language">
      <select
        aria-label={say('page.language')}
        value={translation?.language ?? 'en'}
        onChange={({ target }) => choose(target.value as Language)}
      >
        {languages.map((language) => (
          <option key={language} value={language} lang={language}>
            {languageNames[language]}
          </option>
        ))}
      </select>
      {translation !== undefined && <p className="small quiet">{say('page.unreviewed')}</p>}
    </div>
  );
};
