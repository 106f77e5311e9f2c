import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const wettedShareCases: readonly SheetCase[] = [
  {
    name: '80 % of a dwell of 10 s in an index of 12 s wet for two thirds of it',
    source: script,
    inputs: { part: 0.8, dwell: 10, index: 12 },
    outputs: { share: 2 / 3 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'a spray that never stops wets as long as the rows stand',
    source: script,
    inputs: { part: 1, dwell: 9, index: 12 },
    outputs: { share: 0.75 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];
