import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const channelLifetimeText: SheetText = {
  en: {
    title: 'Mean time to a dangerous failure of a channel',
    about: 'MTTFd of a channel from those of its parts, and what of it counts.',
    inputs: {
      parts: 'Mean time to a dangerous failure of each kind of part',
      numbers: 'How many of each kind',
      cap: 'Counts at most',
    },
    outputs: { lifetime: 'Of the channel', counted: 'Of it counted' },
    options: { cap: { '100': '100 years', '2500': '2500 years, category 4' } },
    notes: {
      ...notesOf('CAUTION_GUARDING', 'LIFETIME_UNDER_3'),
      CHANNEL_CAPPED: 'Longer than a channel may count.',
      CHANNEL_CAP_2500: 'That category 4 counts to 2500 years is from memory, amendment of 2015.',
      CHANNEL_WEAR_REPLACED: 'Holds while parts that wear are replaced at their T10d.',
    },
  },
};
