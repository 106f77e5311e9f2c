import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const meanOfRunCases: readonly SheetCase[] = [
  {
    name: '400 pieces in 420 min: 0.952381 of one a minute',
    source: {
      title: 'overall equipment effectiveness, worked example of a public page',
      place: 'its counts and times; its share of the ideal minute a piece computed from them to six digits',
      mark: 'computed',
    },
    inputs: { bottles: 400, duration: 420 * 60 },
    outputs: { rate: 0.952381 / 60 },
    tolerance: { relative: 1e-6, reason: 'six printed digits' },
  },
  {
    name: 'ten cycles of three bottles, 161.2 s together: 669.975 in an hour',
    source: arithmetic,
    inputs: { bottles: 30, duration: 161.2 },
    outputs: { rate: 669.975 / 3600 },
    tolerance: { relative: 1e-6, reason: 'six printed digits' },
    notes: ['RUN_FEW_BOTTLES'],
  },
];
