import type { SheetText } from '../sheet-text.ts';
import { notesOf, problemsOf } from './notes.text.ts';

export const contactShareText: SheetText = {
  en: {
    title: 'Contact, fixed share of the index',
    about:
      'Residence and contact in a zone that wets for a fixed share of a steady index, and the smallest index that gives a contact.',
    inputs: {
      stations: 'Stations in the zone',
      index: 'Index',
      share: 'Share of the index in which the bottle is wetted',
      required: 'Contact that the rule asks',
    },
    outputs: { residence: 'Residence', contact: 'Contact', leastIndex: 'Smallest index with that contact' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CONTACT_SHORT'),
      CONTACT_SHARE_NOMINAL:
        'A steady index is a nominal one, and the share seldom stays the same when the index changes: a gated spray and a log of real indexes tell more.',
    },
    problems: problemsOf('HYGIENE_NOT_WHOLE'),
  },
};
