import '../style/hall.css';
import type { ReactElement } from 'react';
import { allWords } from '../words/all-words.ts';
import { hallWords } from '../words/hall.text.ts';
import { MoreWords } from '../words/more-words.tsx';
import { HallPage } from './hall-page.tsx';

const catalogue = allWords([], [hallWords]);

/** The page on which a phone is let in, with its words. */
export const HallDoor = (): ReactElement => (
  <MoreWords catalogue={catalogue}>
    <HallPage />
  </MoreWords>
);
