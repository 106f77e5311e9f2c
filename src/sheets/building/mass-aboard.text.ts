import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const massAboardText: SheetText = {
  en: {
    title: 'Mass of what a section is filled with',
    about: 'Mass of the water and product in a section: as it stands, less as it travels.',
    inputs: { full: 'Mass as it stands, filled', empty: 'Mass as it travels, drained' },
    outputs: { mass: 'Mass of what it holds' },
    notes: {
      FULL_UNDER_EMPTY: 'Filled it is lighter than as it travels: one of the two masses is wrong.',
      ...notesOf('CAUTION_STRUCTURE'),
    },
  },
};
