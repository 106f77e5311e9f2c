import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const motorsInputText: SheetText = {
  en: {
    title: 'What motors take on the mean',
    about: 'Power that several motors take from the supply on the mean.',
    inputs: {
      shaftPowers: 'Power at each shaft',
      efficiencies: 'Efficiency of each',
      duties: 'Share of the time in which each runs',
    },
    outputs: { power: 'Power of all' },
    notes: notesOf('CAUTION_ELECTRICAL'),
  },
};
