import type { SheetText } from '../sheet-text.ts';

export const toleranceBoundText: SheetText = {
  en: {
    title: 'Bound over which nearly all bottles lie',
    about:
      'Contents over which a stated share of all bottles lies, with a confidence, from the few that were weighed.',
    inputs: {
      mean: 'Mean of the bottles weighed',
      spread: 'Standard deviation of them',
      bottles: 'Bottles weighed',
      coverage: 'Share of all bottles to lie over the bound',
      confidence: 'Confidence',
    },
    outputs: { factor: 'Tolerance factor', bound: 'Lower bound' },
    notes: { TOLERANCE_NORMAL: 'Good for normal contents of one lane: look at the test of normality first.' },
  },
};
