import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const startingCurrentCases: readonly SheetCase[] = [
  {
    name: 'a motor of 4.5 A started direct at 6 times: 27 A',
    source: arithmetic,
    inputs: { current: 4.5, factor: 6, share: 1 },
    outputs: { start: 27 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
    notes: ['CAUTION_ELECTRICAL'],
  },
  {
    name: 'the same in star-delta: 9 A',
    source: arithmetic,
    inputs: { current: 4.5, factor: 6, share: 1 / 3 },
    outputs: { start: 9 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];
