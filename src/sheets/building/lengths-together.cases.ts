import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const lengthsTogetherCases: readonly SheetCase[] = [
  {
    name: '2.1 m on gear of 110 mm with 50 mm above it want 2.26 m, 7 ft 4.98 in',
    source: arithmetic,
    inputs: { lengths: [2.1, 0.11, 0.05] },
    outputs: { length: 7 * 0.3048 + 4.9764 * 0.0254 },
    notes: ['CAUTION_MOVING'],
    tolerance: { relative: 1e-5, reason: 'five digits' },
  },
];
