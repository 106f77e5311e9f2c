import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const zValueText: SheetText = {
  en: {
    title: 'z from two times',
    about: 'Degrees that cut the time for a decade of germs to a tenth, from two temperatures.',
    inputs: {
      colder: 'Colder temperature',
      dColder: 'D there',
      warmer: 'Warmer temperature',
      dWarmer: 'D at the warmer one',
    },
    outputs: { z: 'z' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY'),
      Z_NOT_OF_A_GERM:
        'Outside 4 to 20 K, where germs lie (memory). The two points of the bottled water rules would give 35 K: a convention, no law of a germ.',
    },
    problems: {
      Z_WARMER: '{path}: the second temperature must be the warmer one.',
      Z_FASTER: '{path}: the warmer temperature must kill faster.',
    },
  },
};
