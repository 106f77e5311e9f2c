import type { SheetText } from '../sheet-text.ts';

export const combinedUncertaintyText: SheetText = {
  en: {
    title: 'Combined uncertainty of a volume',
    about:
      'Combined and expanded uncertainty from independent contributions, each with its degrees of freedom.',
    inputs: {
      contributions: 'Contributions, each as a volume',
      dofs: 'Degrees of freedom, each (1e9 where it is as good as known)',
      confidence: 'Confidence (two-sided)',
    },
    outputs: {
      combined: 'Combined standard uncertainty',
      dof: 'Effective degrees of freedom',
      factor: 'Coverage factor',
      expanded: 'Expanded uncertainty',
      shares: 'Share of each in the variance',
    },
    notes: {
      BUDGET_FEW_DEGREES: 'Few degrees of freedom: repeat the contribution that has the greatest share.',
    },
    problems: { BUDGET_EMPTY: '{path}: all contributions are nothing.' },
  },
};
