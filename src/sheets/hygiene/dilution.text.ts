import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const dilutionText: SheetText = {
  en: {
    title: 'Diluting a concentrate',
    about: 'Concentrate and water that make a final volume of a weaker solution.',
    inputs: { strong: 'Strength of the concentrate', weak: 'Strength wanted', final: 'Final volume' },
    outputs: { concentrate: 'Concentrate', water: 'Water', parts: 'Parts of water to one of concentrate' },
    notes: notesOf('DILUTION_ADD_TO_WATER', 'HYPOCHLORITE_WHICH_PERCENT', 'CAUTION_CHEMICAL'),
    problems: { DILUTION_STRONGER: '{path}: {given} is stronger than the concentrate.' },
  },
};
