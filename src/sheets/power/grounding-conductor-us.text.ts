import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const groundingConductorUsText: SheetText = {
  en: {
    title: 'Equipment grounding conductor, US',
    about: 'Smallest copper equipment grounding conductor behind a protective device.',
    inputs: { rating: 'Rating of the device' },
    outputs: { size: 'Smallest size' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      NEC_250_122:
        'Rule set: US, NEC table 250.122 as transcribed from its older number 250-95. Larger phase conductors, for the drop for example, want a larger one in proportion.',
    },
  },
};
