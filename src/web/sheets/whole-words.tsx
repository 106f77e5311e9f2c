import type { ReactElement, ReactNode } from 'react';
import { registry, sheetEntries } from '../../sheets/registry.ts';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { allWords } from '../words/all-words.ts';
import { foundWords } from '../words/found.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { utilitiesPageWords } from '../words/utilities-page.text.ts';
import { type FindSheet, SheetContext } from './sheet-context.ts';

const catalogue = allWords(sheetEntries, [utilityWords, utilitiesPageWords, foundWords]);

const findSheet: FindSheet = (id) => registry.get(id)?.sheet;

/** A part of the page with the sheets and the words of every discipline: they weigh more than the figures and come later. */
export const WholeWords = ({ children }: { readonly children: ReactNode }): ReactElement => (
  <MoreWords catalogue={catalogue}>
    <SheetContext value={findSheet}>{children}</SheetContext>
  </MoreWords>
);
