import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const throughTransformerCases: readonly SheetCase[] = [
  {
    name: '30 kVA from 208 to 480 V: 36.08 A after it are 83.27 A before it',
    source: { ...arithmetic, place: 'S/(sqrt(3) U) on both sides of 30 kVA' },
    inputs: { current: 36.084, secondary: 480, primary: 208 },
    outputs: { current: 83.272 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: ['CAUTION_ELECTRICAL'],
  },
];
