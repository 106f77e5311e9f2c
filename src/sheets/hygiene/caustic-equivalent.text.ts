import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const causticEquivalentText: SheetText = {
  en: {
    title: 'Caustic of equal effect',
    about:
      'Strength of sodium hydroxide that has the same effect on bacteria at another temperature or time in a soaker washer: 120 to 170 °F (48.9 to 76.7 °C) and 3 to 7 min, nothing beyond.',
    inputs: {
      temperature: 'Temperature at the coldest place',
      time: 'Time in the caustic',
      caustic: 'Free sodium hydroxide there',
      method: 'From',
    },
    outputs: { equal: 'Strength of equal effect', ratio: 'Strength there over it' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CAUTION_CHEMICAL', 'CAUTION_SCALD'),
      CAUSTIC_TABLE_MEMORY:
        'The table is from memory, consistent in itself, not confirmed in a copy: unverified. A code that names figures goes before it.',
      CAUSTIC_NOT_SOIL: 'Equal in its effect on bacteria. Removing soil and labels follows other laws.',
      CAUSTIC_WEAKER: 'The strength there is less than the table asks.',
    },
    options: {
      method: { table: 'the table, between its figures', fit: 'a fit of the table (0.9 % off at worst)' },
    },
  },
};
