import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { byHand, iso13849Examples, referenceCases } from './sources.ts';

const valve = { operations: 60e6, counted: 'dangerous', inYear: 2_534_400 } as const;

export const partLifetimeCases: readonly SheetCase[] = [
  {
    name: 'valve of 60 million: replaced after 23.7 years, 237 years to a dangerous failure',
    source: { ...iso13849Examples, place: 'annex C, example of a pneumatic valve; public transcription' },
    inputs: valve,
    outputs: { dangerous: 60e6, lifetime: 237 * year, replacement: 23.7 * year },
    tolerance: { relative: 5e-3, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'PART_FROM_ITS_MAKER'],
  },
  {
    name: 'the same closer: 236.74 and 23.674 years',
    source: referenceCases,
    inputs: valve,
    outputs: { lifetime: 236.74 * year, replacement: 23.674 * year },
    tolerance: { relative: 3e-5, reason: 'five digits' },
  },
  {
    name: 'half of all failures are dangerous: B10 of 30 million is B10d of 60',
    source: {
      ...iso13849Examples,
      place: 'annex C: B10d is twice B10 where only B10 is known; public transcription',
    },
    inputs: { operations: 30e6, counted: 'all', inYear: 2_534_400 },
    outputs: { dangerous: 60e6 },
    tolerance: { relative: 1e-12, reason: 'exact figures' },
    notes: ['PART_HALF_DANGEROUS'],
  },
  {
    name: 'a contactor of 2 million, 633 600 times a year: worn after 3.16 years',
    source: { ...byHand, place: '2e6/633 600' },
    inputs: { operations: 2e6, counted: 'dangerous', inYear: 633_600 },
    outputs: { lifetime: 31.565657 * year, replacement: 3.1565657 * year },
    tolerance: { relative: 1e-7, reason: 'eight digits' },
    notes: ['PART_REPLACED_EARLY'],
  },
];
