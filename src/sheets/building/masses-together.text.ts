import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const massesTogetherText: SheetText = {
  en: {
    title: 'Several masses together',
    about: 'Mass of several things that are moved as one.',
    inputs: { masses: 'Mass of each' },
    outputs: { mass: 'Mass of all' },
    notes: notesOf('CAUTION_MOVING'),
  },
};
