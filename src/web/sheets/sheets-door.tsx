import { type ReactElement, useMemo } from 'react';
import { sheetEntries } from '../../sheets/registry.ts';
import type { Route } from '../shell/route.ts';
import { PageContext, usePage } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { makeWords } from '../words/words.ts';
import { SheetPage } from './sheet-page.tsx';
import { SheetsPage } from './sheets-page.tsx';

const words = allWords(sheetEntries);

/** The pages of sheets with the words of every discipline: fetched when somebody asks for them. */
export const SheetsDoor = ({
  route,
}: {
  readonly route: Extract<Route, { readonly page: 'sheets' | 'sheet' }>;
}): ReactElement => {
  const page = usePage();
  const whole = useMemo(() => ({ ...page, words: makeWords(words, page.words.locale) }), [page]);
  return (
    <PageContext value={whole}>
      {route.page === 'sheets' ? (
        <SheetsPage />
      ) : (
        <SheetPage key={route.sheet} id={route.sheet} inputs={route.inputs} />
      )}
    </PageContext>
  );
};
