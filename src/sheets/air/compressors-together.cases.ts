import type { SheetCase } from '../sheet-case.ts';

export const compressorsTogetherCases: readonly SheetCase[] = [
  {
    name: 'three compressors of 100 cfm give 300 cfm, 8.495 m3/min',
    source: {
      title: 'exact foot',
      place: '300 x 0.3048^3, worked apart from this program',
      mark: 'computed',
    },
    inputs: { freeAir: (100 * 0.3048 ** 3) / 60, count: 3 },
    outputs: { together: 8.49505398 / 60 },
    tolerance: { relative: 1e-8, reason: 'nine digits' },
    notes: ['COMPRESSORS_ALL_RUN'],
  },
];
