import type { SheetText } from '../sheet-text.ts';
import { chartNotes, chartProblems } from './chart-words.text.ts';

export const individualsChartText: SheetText = {
  en: {
    title: 'Chart of single values',
    about: 'Control limits of single values by the difference of neighbours, and which values lie outside.',
    inputs: { values: 'Values in order of time' },
    outputs: {
      mean: 'Mean',
      movingRange: 'Mean moving range',
      low: 'Lower limit',
      high: 'Upper limit',
      spread: 'Standard deviation by the moving range',
      outside: 'Values outside',
      firstOutside: 'The first of them (0: none)',
    },
    notes: {
      ...chartNotes,
      CHART_FEW_SINGLES: 'Fewer than twenty values: the limits themselves are still rough.',
    },
    problems: chartProblems,
  },
};
