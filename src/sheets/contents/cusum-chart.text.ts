import type { SheetText } from '../sheet-text.ts';
import { ewmaChartText } from './ewma-chart.text.ts';

export const cusumChartText: SheetText = {
  en: {
    title: 'Shift by cumulative sums (CUSUM)',
    about: 'Sums of what a run lies above and below its target: shows a small shift that lasts.',
    inputs: {
      values: 'Values in order of time',
      target: 'Value that the fill is set to',
      slack: 'Slack: half of the shift to be found',
      decision: 'Sum that signals',
    },
    outputs: {
      above: 'Sums above',
      below: 'Sums below',
      firstHigh: 'First signal above (0: none)',
      firstLow: 'First signal below (0: none)',
    },
    notes: ewmaChartText.en.notes,
  },
};
