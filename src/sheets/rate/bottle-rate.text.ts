import type { SheetText } from '../sheet-text.ts';
import { ceilingNote } from './ceiling-note.text.ts';

export const bottleRateText: SheetText = {
  en: {
    title: 'Rate',
    about: 'Bottles over the period in which they come.',
    inputs: { bottles: 'Bottles in a period', period: 'Period' },
    outputs: { rate: 'Rate' },
    notes: { RATE_CEILING: ceilingNote.en },
  },
};
