import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const causticTitrationText: SheetText = {
  en: {
    title: 'Caustic bath by titration',
    about: 'Free caustic and carbonate of a wash bath from the acid to two indicators.',
    inputs: {
      sample: 'Bath taken',
      normality: 'Normality of the acid',
      pink: 'Acid until phenolphthalein loses its pink',
      total: 'All acid until methyl orange turns',
    },
    outputs: {
      sodiumHydroxide: 'Free sodium hydroxide',
      carbonate: 'Sodium carbonate',
      alkali: 'All alkali, counted as sodium hydroxide',
    },
    notes: {
      ...notesOf('CAUTION_CHEMICAL'),
      TITRATION_NO_CAUSTIC: 'No free caustic is left: the first indicator took half of the acid or less.',
      TITRATION_FREE_COUNTS:
        'Judge the bath by its free caustic, not by all alkali: an old bath turns to carbonate and still titrates well.',
    },
    problems: {
      TITRATION_TOTAL: '{path}: all acid cannot be less than that to the first indicator.',
    },
  },
};
