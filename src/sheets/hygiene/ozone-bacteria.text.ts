import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const ozoneBacteriaText: SheetText = {
  en: {
    title: 'Ozone against bacteria',
    about:
      'Lower 95 % bound of the logs that ozone reaches against several bacteria in purified water at 21 °C.',
    inputs: { residual: 'Ozone left at the end of the contact', time: 'Contact' },
    outputs: { ct: 'CT of this contact', reached: 'Logs reached' },
    notes: {
      ...notesOf('HYGIENE_AUTHORITY', 'CAUTION_CHEMICAL'),
      OZONE_LINE_NO_ORIGIN:
        'An empirical line that does not pass through zero: do not use it below the doses that were tested, in other water or at another temperature.',
      OZONE_LINE_BEYOND:
        'Over 0.832 mg·min/L, the dose of 5 logs that the source prints: beyond what is known to have been tested.',
    },
  },
};
