import type { SheetCase } from '../sheet-case.ts';
import { iso13849Examples, referenceCases } from './sources.ts';

export const operationsInYearCases: readonly SheetCase[] = [
  {
    name: '220 days of 16 h, every 5 s: 2.53 million a year',
    source: { ...iso13849Examples, place: 'annex C, example of a pneumatic valve; public transcription' },
    inputs: { days: 220, dailyTime: 16 * 3600, cycle: 5 },
    outputs: { operations: 2.53e6 },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'OPERATIONS_OF_THE_PART'],
  },
  {
    name: 'the same to the last one: 2 534 400',
    source: referenceCases,
    inputs: { days: 220, dailyTime: 16 * 3600, cycle: 5 },
    outputs: { operations: 2_534_400 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
  },
  {
    name: '365 days of 24 h, once an hour: 8760 a year',
    source: {
      title: 'public manual of a locking module',
      place: 'data for the summation of failures',
      mark: 'read',
    },
    inputs: { days: 365, dailyTime: 86_400, cycle: 3600 },
    outputs: { operations: 8760 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
  },
];
