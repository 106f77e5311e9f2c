import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const standardDeviceText: SheetText = {
  en: {
    title: 'Standard rating of a protective device',
    about: 'The standard rating above or below a current, by the list of a rule set.',
    inputs: { current: 'Current', list: 'List', rounding: 'Rounded' },
    outputs: { rating: 'Standard rating' },
    options: {
      list: { 'us-breaker': 'US breakers', 'us-fuse': 'US fuses', iec: 'IEC' },
      rounding: { up: 'up', down: 'down' },
    },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL', 'NEC_240_6', 'IEC_RATINGS_FROM_MEMORY'),
      ROUNDING_BY_RULE:
        'The direction follows the rule: a motor’s branch device may go up to the next rating; a feeder device and every ceiling go down.',
    },
  },
};
