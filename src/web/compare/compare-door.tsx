import type { ReactElement } from 'react';
import { utilityWords } from '../../text/words/utilities.text.ts';
import { allWords } from '../words/all-words.ts';
import { compareWords } from '../words/compare.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { ComparePage } from './compare-page.tsx';

const catalogue = allWords([], [utilityWords, compareWords]);

/** The page where two revisions face each other, with its words. */
export const CompareDoor = (props: Parameters<typeof ComparePage>[0]): ReactElement => (
  <MoreWords catalogue={catalogue}>
    <ComparePage {...props} />
  </MoreWords>
);
