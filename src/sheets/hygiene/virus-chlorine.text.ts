import type { SheetText } from '../sheet-text.ts';
import { ctOutputs, lookUpWords, notesOf } from './notes.text.ts';

export const virusChlorineText: SheetText = {
  en: {
    title: 'CT for viruses by free chlorine',
    about:
      'CT that the table of the US EPA prints for viruses by free chlorine, the time that it asks, and the logs that a contact reaches.',
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
      ...notesOf(
        'HYGIENE_AUTHORITY',
        'CT_WARM',
        'CT_INTERPOLATED',
        'CT_NOT_FOR_RINSE',
        'CT_RESIDUAL',
        'CAUTION_CHEMICAL',
      ),
      CT_VIRUS_PH_10: 'Between pH 9 and 10 the column of pH 10 is used.',
    },
    options: { lookUp: lookUpWords },
  },
};
