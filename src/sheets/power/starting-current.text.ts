import type { SheetText } from '../sheet-text.ts';
import { notesOf } from './notes.text.ts';

export const startingCurrentText: SheetText = {
  en: {
    title: 'Starting current where nobody stated it',
    about: 'Current that a cage motor draws while it starts, from its rated current.',
    inputs: {
      current: 'Rated current',
      factor: 'Starting current over the rated one, started direct',
      share: 'Share of it that the starter lets through',
    },
    outputs: { start: 'Starting current' },
    notes: {
      ...notesOf('CAUTION_ELECTRICAL'),
      START_ESTIMATED:
        'Cage motors draw 5 to 7 times their current while they start, common practice; those of high efficiency more. The code letter or the maker gives the figure.',
    },
  },
};
