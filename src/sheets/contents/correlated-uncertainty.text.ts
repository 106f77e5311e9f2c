import type { SheetText } from '../sheet-text.ts';

export const correlatedUncertaintyText: SheetText = {
  en: {
    title: 'Combined uncertainty of parts that hang together',
    about:
      'Combined uncertainty of a volume whose contributions are correlated, such as two weighings on one balance.',
    inputs: {
      contributions: 'Contributions, each as a volume, with the sign of its sensitivity',
      correlations: 'Correlations of the pairs, in the order 12, 13, …, 23, …',
    },
    outputs: {
      combined: 'Combined standard uncertainty',
      apart: 'The same if nothing tied them',
    },
    notes: {},
    problems: {
      CORRELATIONS_COUNT: '{path}: {given} correlations. So many pairs there are: {allowed}.',
      CORRELATIONS_IMPOSSIBLE: '{path}: no parts can hang together in this way.',
    },
  },
};
