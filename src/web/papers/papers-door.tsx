import '../style/papers.css';
import type { ReactElement } from 'react';
import { allWords } from '../words/all-words.ts';
import { MoreWords } from '../words/more-words.tsx';
import { papersPageWords } from '../words/papers-page.text.ts';
import { PapersPage } from './papers-page.tsx';

const catalogue = allWords([], [papersPageWords]);

/** The page of the papers, with its words. */
export const PapersDoor = (): ReactElement => (
  <MoreWords catalogue={catalogue}>
    <PapersPage />
  </MoreWords>
);
