import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const chain: Source = {
  title: 'variance summed over the birth and death chain (Poisson’s equation) with 700 digits',
  place: 'independent script',
  mark: 'computed',
};
const printed = { relative: 1e-12, reason: 'printed digits' };

export const runLengthForWaitingCases: readonly SheetCase[] = [
  {
    name: 'load 0.9, one a second, to a twentieth at 95 %: 648 780 s for a mean of nine',
    source: chain,
    inputs: { arrivals: 0.9, pace: 1, relative: 0.05, confidence: 0.95 },
    outputs: { present: 9, variance: 34_200, length: 648_779.7119394522 },
    tolerance: printed,
    notes: ['WAIT_RUN_SETTLED'],
  },
  {
    name: 'load 0.5: 36 878 s',
    source: chain,
    inputs: { arrivals: 0.5, pace: 1, relative: 0.05, confidence: 0.95 },
    outputs: { present: 1, variance: 24, length: 36_878.004678663594 },
    tolerance: printed,
  },
  {
    name: 'load 0.7, one every five seconds, to a tenth at 90 %: 73 007 s',
    source: chain,
    inputs: { arrivals: 0.14, pace: 0.2, relative: 0.1, confidence: 0.9 },
    outputs: { variance: 293.82716049382714 / 0.2, length: 73_006.72812638416 },
    tolerance: printed,
  },
];
