import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const chickWatsonText: SheetText = {
  en: {
    title: 'Logs by a known rate of inactivation',
    about: 'Logs that a contact reaches and the time that wanted logs ask, by the law of Chick and Watson.',
    inputs: {
      rate: 'Rate of inactivation',
      residual: 'Disinfectant left at the end of the contact',
      time: 'Contact',
      logs: 'Logs wanted',
    },
    outputs: { ct: 'CT of this contact', reached: 'Logs reached', neededTime: 'Contact for the wanted logs' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CT_NOT_FOR_RINSE', 'CT_RESIDUAL', 'CAUTION_CHEMICAL'),
      CHICK_EXPONENT_ONE: 'Concentration counts with exponent 1, as is usual.',
    },
  },
};
