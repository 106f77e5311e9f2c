import type { ReactElement } from 'react';
import { allWords } from '../words/all-words.ts';
import { MoreWords } from '../words/more-words.tsx';
import { newBookWords } from '../words/new-book.text.ts';
import { NewPage } from './new-page.tsx';

const catalogue = allWords([], [newBookWords]);

/** The page where a book begins, with its words. */
export const NewDoor = ({ form }: { readonly form: boolean }): ReactElement => (
  <MoreWords catalogue={catalogue}>
    <NewPage form={form} />
  </MoreWords>
);
