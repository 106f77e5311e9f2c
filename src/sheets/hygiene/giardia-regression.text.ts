import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const giardiaRegressionText: SheetText = {
  en: {
    title: 'CT for Giardia by free chlorine, from the regression',
    about:
      'The published formula in place of the table of the US EPA: the table is the reference, this is its cautious substitute. It ends where the table does: 0.5 to 25 °C, pH 6 to 9, 0.4 to 3 mg/L.',
    inputs: {
      temperature: 'Water temperature',
      acidity: 'pH',
      chlorine: 'Free chlorine at the end of the contact',
      logs: 'Logs wanted',
    },
    outputs: { needed: 'CT that the logs ask' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CT_NOT_FOR_RINSE', 'CT_RESIDUAL', 'CAUTION_CHEMICAL'),
      CT_REGRESSION_HIGH:
        'Lies up to 17 % above the table, and nowhere under it by more than its rounding: the table is the reference.',
    },
  },
};
