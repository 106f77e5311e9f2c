import type { SheetText } from '../sheet-text.ts';

export const ewmaChartText: SheetText = {
  en: {
    title: 'Drift by a weighted moving average (EWMA)',
    about: 'Average of a run in which the newest value weighs most, against its limits: shows a slow drift.',
    inputs: {
      values: 'Values in order of time',
      target: 'Value that the fill is set to',
      spread: 'Standard deviation of a single value',
      weight: 'Weight of the newest value',
      reach: 'Limits, in standard deviations',
    },
    outputs: {
      averages: 'Averages',
      reaches: 'Half-width of the limits at each',
      low: 'Lower limit, settled',
      high: 'Upper limit, settled',
      firstSignal: 'First average outside its limits (0: none)',
    },
    notes: { CHART_DRIFT: 'The fill has moved from what it was set to.' },
  },
};
