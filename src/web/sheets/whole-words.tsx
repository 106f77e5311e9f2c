import { type ReactElement, type ReactNode, useMemo } from 'react';
import { registry, sheetEntries } from '../../sheets/registry.ts';
import { PageContext, usePage } from '../state/page-context.ts';
import { allWords } from '../words/all-words.ts';
import { utilitiesPageWords } from '../words/utilities-page.text.ts';
import { makeWords } from '../words/words.ts';
import { type FindSheet, SheetContext } from './sheet-context.ts';

const catalogue = allWords(sheetEntries, [utilitiesPageWords]);

const findSheet: FindSheet = (id) => registry.get(id)?.sheet;

/** A part of the page with the sheets and the words of every discipline: they weigh more than the figures and come later. */
export const WholeWords = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const page = usePage();
  const whole = useMemo(() => ({ ...page, words: makeWords(catalogue, page.words.locale) }), [page]);
  return (
    <PageContext value={whole}>
      <SheetContext value={findSheet}>{children}</SheetContext>
    </PageContext>
  );
};
