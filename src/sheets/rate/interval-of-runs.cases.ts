import type { SheetCase } from '../sheet-case.ts';
import { bankDelays, tenObservations } from './textbook-figures.cases.ts';
import { runsTable, statisticsScript } from './trial-sources.ts';

export const intervalOfRunsCases: readonly SheetCase[] = [
  {
    name: 'ten mean delays of a bank with five tellers: 2.031 and 90 % between 1.709 and 2.353',
    source: runsTable,
    inputs: { values: bankDelays, confidence: 0.9 },
    outputs: { mean: 2.031, spread: 0.555967, halfWidth: 0.322283, low: 1.708717, high: 2.353283 },
    tolerance: { absolute: 5e-7, reason: 'six printed digits' },
  },
  {
    name: 'ten other observations: 1.343, half width 0.237 at 90 %',
    source: statisticsScript,
    inputs: { values: tenObservations, confidence: 0.9 },
    outputs: { mean: 1.343, spread: 0.409283, halfWidth: 0.237253 },
    tolerance: { absolute: 5e-7, reason: 'six printed digits' },
  },
  {
    name: 'four values 2, 5, 8, 11: half width 6.1628 at 95 %',
    source: statisticsScript,
    inputs: { values: [2, 5, 8, 11], confidence: 0.95 },
    outputs: { mean: 6.5, spread: 3.872983346207417, halfWidth: 6.162780770281563 },
    tolerance: { relative: 1e-12, reason: 'printed digits' },
    notes: ['RUNS_FEW'],
  },
];
