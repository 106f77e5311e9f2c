import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './trial-sources.ts';

export const runToShowMeanTimeCases: readonly SheetCase[] = [
  {
    name: 'an hour between stops with two allowed: 6.2958 h at 95 %; a line of four hours passes in 79 of 100',
    source: statisticsScript,
    inputs: { agreed: 3600, allowed: 2, confidence: 0.95, expected: 4 * 3600 },
    outputs: { running: 6.295793622 * 3600, passing: 0.7900684661545575 },
    tolerance: { relative: 1e-9, reason: 'ten printed digits' },
    notes: ['STOPS_STEADY'],
  },
  {
    name: 'a line that is just what was agreed passes in 5 of 100, whatever is allowed',
    source: { title: 'definition of the confidence', place: 'derived', mark: 'computed' },
    inputs: { agreed: 1800, allowed: 5, confidence: 0.95, expected: 1800 },
    outputs: { passing: 0.05 },
    tolerance: { relative: 1e-10, reason: 'a quantile and its tail' },
    notes: ['RUN_LIKELY_FAILS'],
  },
];
