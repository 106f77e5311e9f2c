import type { SheetText } from '../sheet-text.ts';

export const agreedPeriodText: SheetText = {
  en: {
    title: 'Period of an agreed rate',
    about: 'Longest period that a station or a line may take for its bottles to keep an agreed rate.',
    inputs: { rate: 'Agreed rate', bottles: 'Bottles in a period' },
    outputs: { period: 'Period' },
    notes: {
      AGREED_PERIOD_NO_STOP:
        'Counts no stop, no bottle missing and none rejected: to keep the rate over a shift the period must be shorter.',
    },
  },
};
