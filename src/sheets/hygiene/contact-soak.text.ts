import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const contactSoakText: SheetText = {
  en: {
    title: 'Contact, immersed',
    about: 'Residence and contact of a bottle that soaks, and the smallest index that gives a contact.',
    inputs: {
      stations: 'Stations in the bath',
      index: 'Index',
      emptying: 'Time in which the bottle empties or is above the liquid',
      required: 'Contact that the rule asks',
    },
    outputs: { residence: 'Residence', contact: 'Contact', leastIndex: 'Smallest index with that contact' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CONTACT_SHORT'),
      CONTACT_STOP_SOAK:
        'Bottles that stand in the bath during a stop soak longer: judge them on their own for the longest soak.',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};
