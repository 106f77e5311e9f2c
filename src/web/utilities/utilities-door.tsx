import type { ReactElement } from 'react';
import { WholeWords } from '../sheets/whole-words.tsx';
import { UtilitiesPage } from './utilities-page.tsx';

/** The page of utilities with the words of every sheet behind it: fetched when somebody asks for it. */
export const UtilitiesDoor = (): ReactElement => (
  <WholeWords>
    <UtilitiesPage />
  </WholeWords>
);
