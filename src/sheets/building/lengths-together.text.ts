import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const lengthsTogetherText: SheetText = {
  en: {
    title: 'Several lengths together',
    about: 'Lengths one behind, beside or above the other, free room among them.',
    inputs: { lengths: 'Each length' },
    outputs: { length: 'All of them' },
    notes: notesOf('CAUTION_MOVING'),
  },
};
