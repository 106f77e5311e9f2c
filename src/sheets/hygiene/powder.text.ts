import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const powderText: SheetText = {
  en: {
    title: 'Solution from a powder',
    about: 'Powder that makes a volume of solution of a wanted strength.',
    inputs: { strength: 'Active share of the powder', wanted: 'Strength wanted', volume: 'Volume' },
    outputs: { dose: 'Powder in the solution', mass: 'Powder' },
    notes: notesOf('DILUTION_ADD_TO_WATER', 'CAUTION_CHEMICAL'),
  },
};
