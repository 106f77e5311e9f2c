import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { periods } from './bounds.ts';
import { type MeanInterval, meanInterval } from './interval-of-runs.ts';
import { assumedConfidence } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';

interface TimesInputs {
  readonly times: readonly number[];
  readonly confidence: number;
}

/** Under this many the watch says little of what comes seldom: a late valve, a held row. Common practice. */
const fewTimes = 10;

/** Times that a watch took one after the other: their mean, and the interval that holds the mean. */
export const meanTimeIntervalSheet = defineSheet<TimesInputs, MeanInterval>({
  id: 'rate/mean-time-interval',
  version: 1,
  inputs: {
    times: listField('time', 'x_i', { ...periods, fewest: 2 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    mean: numberField('time', '\\bar x', { digits: 6 }),
    spread: numberField('time', 's'),
    halfWidth: numberField('time', 'h'),
    low: numberField('time', 'x_-', { digits: 6 }),
    high: numberField('time', 'x_+', { digits: 6 }),
  },
  formula: [
    'x_\\mp = \\bar x \\mp h, \\quad h = t_{(1+P)/2,\\, n-1} \\frac{s}{\\sqrt n}',
    '\\bar x = \\frac{1}{n} \\sum_i x_i, \\quad s^2 = \\frac{1}{n-1} \\sum_i (x_i - \\bar x)^2',
  ],
  limits: [
    { code: 'TIMES_NO_STOP', broken: () => true },
    {
      code: 'TIMES_FEW',
      broken: ({ times }) => times.length < fewTimes,
      parts: ({ times }) => ({ times: times.length }),
    },
  ],
  sources: [statisticsTheory],
  compute: ({ times, confidence }) => meanInterval(times, confidence),
});
