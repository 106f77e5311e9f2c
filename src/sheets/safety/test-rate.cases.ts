import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { iso13849 } from './sources.ts';

const clause = {
  ...iso13849,
  place:
    '4.5.4: demands at most a hundredth of the tests, tester above half of the logic; numbers put in by hand',
} as const;
const exact = { relative: 1e-9, reason: 'exact figures' } as const;

export const testRateCases: readonly SheetCase[] = [
  {
    name: 'a demand each hour, a test each 36 s: a hundred, just enough',
    source: clause,
    inputs: { demandEvery: 3600, testEvery: 36, logic: 30 * year, tester: 20 * year },
    outputs: { tests: 100, longestInterval: 36, share: 2 / 3 },
    tolerance: exact,
    notes: ['CAUTION_GUARDING'],
  },
  {
    name: 'tested once a shift, opened four times: too seldom, by a tester of half the lifetime',
    source: clause,
    inputs: { demandEvery: 7200, testEvery: 28_800, logic: 30 * year, tester: 15 * year },
    outputs: { tests: 0.25, longestInterval: 72, share: 0.5 },
    tolerance: exact,
    notes: ['TEST_TOO_SELDOM', 'TESTER_TOO_SHORT'],
  },
];
