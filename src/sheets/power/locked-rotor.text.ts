import type { SheetText } from '../sheet-text.ts';
import { asWritten } from './as-written.ts';
import { letters } from './locked-rotor-letters.ts';
import { notesOf } from './notes.text.ts';

export const lockedRotorText: SheetText = {
  en: {
    title: 'Locked-rotor current from the code letter',
    about: 'What a motor draws at the moment of a direct start, between the two ends of its code letter.',
    inputs: { power: 'Plate rating', voltage: 'Voltage, line to line', letter: 'Code letter' },
    outputs: { lowest: 'Lowest', highest: 'Highest' },
    options: { letter: asWritten(letters) },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      LOCKED_ROTOR_TABLE:
        'Rule set: US, NEC table 430.7(B) as transcribed. Usual letters: under 1 hp L; 1 1/2 to 2 hp L or M; 3 hp K; 5 hp J; 7 1/2 to 10 hp H; from 15 hp G.',
    },
  },
};
