import type { Bundle } from '../../text/index.ts';

/** Words of the big keys. */
export const padWords: Bundle = {
  en: {
    'pad.keys': 'Keypad',
    'pad.mark': 'decimal mark',
    'pad.back': 'last digit away',
  },
};
