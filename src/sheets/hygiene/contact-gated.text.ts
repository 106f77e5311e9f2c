import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const contactGatedText: SheetText = {
  en: {
    title: 'Contact, gated spray',
    about:
      'Residence and contact in a zone whose spray opens with every index, and the smallest index that gives a contact.',
    inputs: {
      stations: 'Stations in the zone',
      index: 'Index',
      dead: 'Dead time of an index',
      timeOut: 'Time after which the spray shuts',
      required: 'Contact that the rule asks',
    },
    outputs: {
      residence: 'Residence',
      wetted: 'Wetted in an index',
      contact: 'Contact',
      leastIndex: 'Smallest index with that contact',
    },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CONTACT_SHORT', 'CONTACT_DEAD_TIME'),
      CONTACT_NEVER_WET: 'The index is over before the spray stands: the bottle is never wetted.',
    },
    problems: {
      ...problemsOf('HYGIENE_NOT_WHOLE'),
      CONTACT_NO_INDEX:
        '{path}: the spray shuts before, so no index gives {given} here; {stations} stations would.',
    },
  },
};
