import type { SheetText } from '../sheet-text.ts';

export const timeIntervalText: SheetText = {
  en: {
    title: 'Interval of a time',
    about:
      'Both ends between which a time lies, from independent contributions, each with its degrees of freedom.',
    inputs: {
      time: 'Time',
      contributions: 'Contributions, each as a time',
      dofs: 'Degrees of freedom, each (1e9 where it is as good as known)',
      confidence: 'Confidence (two-sided)',
    },
    outputs: {
      combined: 'Combined standard uncertainty',
      dof: 'Effective degrees of freedom',
      factor: 'Coverage factor',
      lower: 'Lower end',
      upper: 'Upper end',
      shares: 'Share of each in the variance',
    },
    notes: {
      BUDGET_FEW_DEGREES: 'Few degrees of freedom: repeat the contribution that has the greatest share.',
    },
    problems: { BUDGET_EMPTY: '{path}: all contributions are nothing.' },
  },
};
