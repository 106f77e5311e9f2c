import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const motorCurrentIecText: SheetText = {
  en: {
    title: 'Typical current of an IEC motor at 400 V',
    about: 'What the tables in use print for a cage motor at 400 V, where the nameplate is not at hand.',
    inputs: { power: 'Plate rating' },
    outputs: { lowest: 'Lowest of the tables', highest: 'Highest of the tables' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      TYPICAL_ONLY:
        'Rule set: IEC. Typical only, the tables differ by up to 12 %; by IEC rules the nameplate current counts.',
      TYPICAL_FROM_MEMORY: 'This row is from memory (IEC 60947-4-1 annex G), not confirmed in a copy.',
    },
  },
};
