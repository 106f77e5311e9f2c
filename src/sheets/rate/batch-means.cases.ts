import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

export const batchMeansCases: readonly SheetCase[] = [
  {
    name: 'one to twelve in four batches: 2, 5, 8, 11, half width 6.1628, and they rise one after the other',
    source: statisticsScript,
    inputs: { values: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], warmUp: 0, batches: 4, confidence: 0.95 },
    outputs: {
      means: [2, 5, 8, 11],
      batchSize: 3,
      mean: 6.5,
      halfWidth: 6.162780770281563,
      correlation: 0.25,
    },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
    notes: ['BATCHES_FOLLOW_EACH_OTHER', 'BATCHES_FEW'],
  },
  {
    name: 'digits of pi, the first three as warm-up and one left over: five batches of four',
    source: statisticsScript,
    inputs: {
      values: [3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5, 8, 9, 7, 9, 3, 2, 3, 8, 4, 6, 2, 6, 4],
      warmUp: 3,
      batches: 5,
      confidence: 0.9,
    },
    outputs: {
      means: [5.5, 5.25, 7, 4.25, 4.5],
      batchSize: 4,
      mean: 5.3,
      halfWidth: 1.0306988677042304,
      low: 5.3 - 1.0306988677042304,
      high: 5.3 + 1.0306988677042304,
      correlation: -0.22245989304812835,
    },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
  },
];
