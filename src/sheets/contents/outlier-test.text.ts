import type { SheetText } from '../sheet-text.ts';
import { chartProblems } from './chart-words.text.ts';

export const outlierTestText: SheetText = {
  en: {
    title: 'Does the farthest value belong?',
    about: "Grubbs' test of the value that lies farthest from the mean.",
    inputs: {
      values: 'Values of one population (one lane, one preset)',
      sides: 'Sides',
      significance: 'Chance of a false alarm',
    },
    outputs: {
      place: 'Place of the farthest value',
      value: 'The value',
      statistic: 'Standard deviations from the mean (G)',
      critical: 'G at which it does not belong',
      verdict: 'Verdict',
    },
    options: {
      sides: { one: 'one side, known beforehand', two: 'either side' },
      verdict: { outlier: 'does not belong', none: 'may belong' },
    },
    notes: {
      OUTLIER_FEW: 'Of fewer than seven values hardly anything can lie far enough out to show.',
      OUTLIER_FOUND:
        'Look for the reason first: a value is left out for what happened, not for where it lies.',
    },
    problems: chartProblems,
  },
};
