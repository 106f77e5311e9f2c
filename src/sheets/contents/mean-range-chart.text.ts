import type { SheetText } from '../sheet-text.ts';
import { chartNotes, chartProblems } from './chart-words.text.ts';
import { subgroupSizes } from './range-constants.ts';

export const meanRangeChartText: SheetText = {
  en: {
    title: 'Chart of means and ranges',
    about: 'Control limits of the means and ranges of subgroups, and which subgroups lie outside.',
    inputs: {
      values: 'Values in order of time, subgroup after subgroup',
      size: 'Values in a subgroup',
    },
    outputs: {
      grandMean: 'Mean of all',
      meanLow: 'Lower limit of a mean',
      meanHigh: 'Upper limit of a mean',
      meanRange: 'Mean range',
      rangeLow: 'Lower limit of a range',
      rangeHigh: 'Upper limit of a range',
      spread: 'Standard deviation within subgroups',
      outside: 'Subgroups outside',
      firstOutside: 'The first of them (0: none)',
    },
    options: { size: Object.fromEntries(subgroupSizes.map((size) => [size, size])) },
    notes: {
      ...chartNotes,
      CHART_FEW: 'Fewer than twenty subgroups: the limits themselves are still rough.',
    },
    problems: {
      ...chartProblems,
      CHART_SUBGROUPS: '{path}: {given} values do not make two or more whole subgroups of {allowed}.',
    },
  },
};
