import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const meanOverflowCases: readonly SheetCase[] = [
  {
    name: 'by hand: 2.017, 2.005 and 2.012 L over 2.010 L give (7 + 0 + 2)/3 mL',
    source: arithmetic,
    inputs: { filled: [2.017e-3, 2.005e-3, 2.012e-3], level: 2.01e-3 },
    outputs: { overflow: 3e-6 },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
    notes: ['OVERFLOW_SHORT_LANE'],
  },
];
