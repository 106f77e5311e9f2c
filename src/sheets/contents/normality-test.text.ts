import type { SheetText } from '../sheet-text.ts';
import { chartProblems } from './chart-words.text.ts';

export const normalityTestText: SheetText = {
  en: {
    title: 'Do the values look normal?',
    about: 'Test of Anderson and Darling, to be asked before a tolerance bound or a capability is believed.',
    inputs: { values: 'Values of one lane at one preset', significance: 'Chance of a false alarm' },
    outputs: {
      statistic: 'Statistic',
      adjusted: 'Statistic adjusted for the number of values',
      critical: 'Value at which they do not look normal',
      verdict: 'Verdict',
    },
    options: {
      significance: { '0.10': '10 %', '0.05': '5 %', '0.025': '2.5 %', '0.01': '1 %' },
      verdict: { normal: 'may be normal', 'not normal': 'not normal' },
    },
    notes: {
      NORMALITY_FEW: 'Of fewer than twenty values only a gross departure shows.',
      NORMALITY_FAILS:
        'Tolerance bounds and capability rest on a normal spread: are lanes mixed, or first fills in it?',
    },
    problems: chartProblems,
  },
};
