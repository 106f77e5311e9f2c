import type { SheetText } from '../sheet-text.ts';

export const firstBottlesText: SheetText = {
  en: {
    title: 'First bottles after a stop',
    about: 'By how much the first bottles after a stop hold more or less than those of a running line.',
    inputs: {
      misses: 'Contents less those of a running line, each bottle',
      confidence: 'Confidence (two-sided)',
    },
    outputs: {
      mean: 'Mean difference',
      lowest: 'Least',
      highest: 'Most',
      spread: 'Standard deviation',
      halfWidth: 'Half width of the mean',
    },
    notes: {
      FIRST_BOTTLES_FEW:
        'Few bottles, and stops differ: weigh the first bottle of each lane after several stops, of a minute and of a night.',
    },
  },
};
