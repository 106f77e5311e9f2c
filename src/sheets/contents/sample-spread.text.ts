import type { SheetText } from '../sheet-text.ts';

/** Words of the sheets of a spread; only their title differs. */
export const sampleSpreadText = (title: string): SheetText => ({
  en: {
    title,
    about:
      'What a few measured pieces say of all of them: mean and spread with their bounds, and between which values nearly all pieces lie.',
    inputs: {
      values: 'Measured',
      confidence: 'Confidence of the bounds',
      coverage: 'Share of all pieces that the interval holds',
    },
    outputs: {
      mean: 'Mean',
      spread: 'Standard deviation',
      meanLow: 'Mean, at least',
      meanHigh: 'Mean, at most',
      spreadLow: 'Standard deviation, at least (one-sided)',
      spreadHigh: 'Standard deviation, at most (one-sided)',
      low: 'Nearly all pieces from',
      high: 'Nearly all pieces to',
    },
    notes: {
      SPREAD_FEW: 'Fewer than five: the bounds are wide because little is known. Measure more.',
      SPREAD_NONE: 'All are equal: the reading is too coarse to show their spread.',
    },
  },
});
