import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const lineCurrentsText: SheetText = {
  en: {
    title: 'Line currents of loads between the lines',
    about: 'Current in each line from loads between the lines, such as heater elements, balanced or not.',
    inputs: {
      ab: 'Load a to b',
      bc: 'Load b to c',
      ca: 'Load c to a',
      powerFactorAb: 'Power factor a to b',
      powerFactorBc: 'Power factor b to c',
      powerFactorCa: 'Power factor c to a',
    },
    outputs: { a: 'Line a', b: 'Line b', c: 'Line c' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      LINES_UNEQUAL:
        'The lines differ by over a tenth: the largest counts for each of them, and the supply is unbalanced.',
      LINES_BALANCED_VOLTAGE:
        'For balanced voltages in the order a-b-c. Added to a motor’s current as numbers this is a conservative sum.',
    },
  },
};
