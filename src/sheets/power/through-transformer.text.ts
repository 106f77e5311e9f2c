import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const throughTransformerText: SheetText = {
  en: {
    title: 'Current before a transformer',
    about: 'What the supply gives for a current on the other side of a transformer.',
    inputs: { current: 'Current after it', secondary: 'Voltage after it', primary: 'Voltage before it' },
    outputs: { current: 'Current before it' },
    notes: notesOf('CAUTION_ELECTRICAL'),
  },
};
