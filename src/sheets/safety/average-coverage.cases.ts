import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { iso13849Examples, referenceCases } from './sources.ts';

const guard = {
  shares: [0.6, 0.99, 0.3, 0.9],
  parts: [20 * year, 30 * year, 20 * year, 20 * year],
};

export const averageCoverageCases: readonly SheetCase[] = [
  {
    name: '60, 99, 30 and 90 % on 20, 30, 20 and 20 years: 67.1 %, low',
    source: {
      ...iso13849Examples,
      place: 'annex I, example B, guard with two channels; public transcription',
    },
    inputs: guard,
    outputs: { coverage: 0.671, coverageClass: 'low' },
    tolerance: { relative: 5e-4, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'COVERAGE_ALL_PARTS'],
  },
  {
    name: 'the same closer: 67.09 %',
    source: referenceCases,
    inputs: guard,
    outputs: { coverage: 0.6709 },
    tolerance: { relative: 1e-4, reason: 'four digits' },
  },
];
