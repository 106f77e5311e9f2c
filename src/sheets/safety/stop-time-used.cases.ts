import type { SheetCase } from '../sheet-case.ts';
import { referenceCases } from './sources.ts';

const milliseconds = (...readings: readonly number[]) => readings.map((ms) => ms / 1000);

export const stopTimeUsedCases: readonly SheetCase[] = [
  {
    name: 'ten stops: mean 182.9, s 3.7253, mean + 3 s 194.08 over the highest 190 ms',
    source: referenceCases,
    inputs: { readings: milliseconds(182, 179, 185, 181, 190, 178, 184, 183, 187, 180), wear: 0 },
    outputs: {
      mean: 0.1829,
      sd: 0.0037253,
      spread: 0.19408,
      highest: 0.19,
      settledBy: 'spread',
      time: 0.19408,
    },
    tolerance: { relative: 4e-5, reason: 'five printed digits of 194.0759 ms' },
    notes: ['CAUTION_GUARDING', 'STOP_NO_WEAR', 'STOP_MEASURE_AGAIN', 'STOP_RULE_MEMORY'],
  },
  {
    name: 'eleven stops of which one hangs: the highest lies over mean + 3 s',
    source: {
      title: 'Python 3, statistics.mean and statistics.stdev',
      place: 'run apart from this program',
      mark: 'computed',
    },
    inputs: { readings: milliseconds(100, 100, 100, 100, 100, 100, 100, 100, 100, 100, 300), wear: 0.2 },
    outputs: {
      mean: 0.118181818,
      sd: 0.060302269,
      spread: 0.299088625,
      highest: 0.3,
      settledBy: 'highest',
      time: 0.36,
    },
    tolerance: { relative: 1e-8, reason: 'nine digits' },
  },
  {
    name: 'two stops are too few for the rule, and said so',
    source: {
      title: 'hand calculation from the formula',
      place: 's = difference over root 2',
      mark: 'computed',
    },
    inputs: { readings: [0.2, 0.21], wear: 0.1 },
    outputs: { mean: 0.205, sd: 0.01 / Math.SQRT2, time: 1.1 * (0.205 + 0.03 / Math.SQRT2) },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['STOP_READINGS_FEW'],
  },
];
