import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const twoChannelsText: SheetText = {
  en: {
    title: 'Two unequal channels',
    about: 'The one mean time to a dangerous failure that stands for two unequal channels.',
    inputs: { first: 'Of the first channel', second: 'Of the second channel' },
    outputs: { lifetime: 'Stands for both' },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'LIFETIME_UNDER_3'),
      CHANNELS_UNCAPPED: 'A channel over 100 years counts as 100, but in category 4: cap it before.',
    },
  },
};
