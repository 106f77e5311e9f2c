import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const causticPhText: SheetText = {
  en: {
    title: 'pH of caustic in water',
    about: 'pH of sodium hydroxide in pure water.',
    inputs: { concentration: 'Sodium hydroxide' },
    outputs: { acidity: 'pH' },
    notes: {
      ...notesOf('UNBUFFERED', 'CAUTION_CHEMICAL'),
      CAUSTIC_WASTE:
        'From pH 12.5 on, waste counts as corrosive and hazardous in the US (40 CFR 261.22, from memory): the sewer authority decides what may be drained.',
    },
  },
};
