import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const currentsTogetherText: SheetText = {
  en: {
    title: 'Currents of several loads together',
    about: 'What flows in the conductors of a line while everything on it runs.',
    inputs: { currents: 'Current of each load' },
    outputs: { current: 'Current of all' },
    notes: notesOf('CAUTION_ELECTRICAL', 'SUM_CONSERVATIVE'),
  },
};
