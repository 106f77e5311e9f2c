import type { SheetCase } from '../sheet-case.ts';
import { bankDelays, tenObservations } from './textbook-figures.cases.ts';
import { runsTable, statisticsScript } from './trial-sources.ts';

const minutes = (each: readonly number[]): readonly number[] => each.map((value) => 60 * value);

export const meanTimeIntervalCases: readonly SheetCase[] = [
  {
    name: 'ten mean delays of a bank with five tellers: 2.031 min, 90 % between 1.709 and 2.353 min',
    source: runsTable,
    inputs: { times: minutes(bankDelays), confidence: 0.9 },
    outputs: {
      mean: 60 * 2.031,
      spread: 60 * 0.555967,
      halfWidth: 60 * 0.322283,
      low: 60 * 1.708717,
      high: 60 * 2.353283,
    },
    tolerance: { absolute: 60 * 5e-7, reason: 'six printed digits of a minute' },
    notes: ['TIMES_NO_STOP'],
  },
  {
    name: 'ten other observations: 1.343 min, half width 0.237 min at 90 %',
    source: statisticsScript,
    inputs: { times: minutes(tenObservations), confidence: 0.9 },
    outputs: { mean: 60 * 1.343, spread: 60 * 0.409283, halfWidth: 60 * 0.237253 },
    tolerance: { absolute: 60 * 5e-7, reason: 'six printed digits of a minute' },
  },
  {
    name: 'four times 2, 5, 8, 11 s: half width 6.1628 s at 95 %, and few',
    source: statisticsScript,
    inputs: { times: [2, 5, 8, 11], confidence: 0.95 },
    outputs: { mean: 6.5, spread: 3.872983346207417, halfWidth: 6.162780770281563 },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
    notes: ['TIMES_NO_STOP', 'TIMES_FEW'],
  },
];
