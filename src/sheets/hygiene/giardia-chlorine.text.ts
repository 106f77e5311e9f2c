import type { SheetText } from '../sheet-text.ts';
import { ctOutputs, giardiaEndNotes, lookUpWords, notesOf } from './notes.text.ts';

export const giardiaChlorineText: SheetText = {
  en: {
    title: 'CT for Giardia by free chlorine',
    about:
      'CT that the table of the US EPA prints for Giardia by free chlorine, the time that it asks, and the logs that a contact reaches.',
    inputs: {
      temperature: 'Water temperature',
      acidity: 'pH',
      chlorine: 'Free chlorine at the end of the contact',
      time: 'Contact',
      logs: 'Logs wanted',
      lookUp: 'Look-up',
    },
    outputs: ctOutputs,
    notes: {
      ...giardiaEndNotes,
      ...notesOf(
        'HYGIENE_AUTHORITY',
        'CT_INTERPOLATED',
        'CT_NOT_FOR_RINSE',
        'CT_RESIDUAL',
        'CAUTION_CHEMICAL',
      ),
    },
    options: { lookUp: lookUpWords },
  },
};
