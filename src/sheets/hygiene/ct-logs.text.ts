import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const ctLogsText: SheetText = {
  en: {
    title: 'CT to logs',
    about:
      'Logs of inactivation of one or several stretches of contact, each against the CT of its own table.',
    inputs: {
      residuals: 'Disinfectant left at the end of each stretch',
      times: 'Contact of each stretch',
      tableCts: 'CT of the table for each stretch',
      tableLogs: 'Logs that the table is for (3 Giardia, 4 viruses)',
    },
    outputs: { cts: 'CT of each stretch', ratio: 'Sum of the ratios', reached: 'Logs reached' },
    notes: notesOf('HYGIENE_AUTHORITY', 'CT_NOT_FOR_RINSE', 'CT_RESIDUAL', 'CAUTION_CHEMICAL'),
  },
};
