import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const exact = { absolute: 1e-6, reason: 'differences of the stated temperatures' } as const;

export const glassShockCases: readonly SheetCase[] = [
  {
    name: 'three caustic baths of a beer line: 15, 30, 55, 60, 80, 60, 35, 15 degC',
    source: arithmetic,
    inputs: { temperatures: [288.15, 303.15, 328.15, 333.15, 353.15, 333.15, 308.15, 288.15] },
    outputs: { largestRise: 25, largestFall: 25, designMargin: 10, testMargin: 17 },
    tolerance: exact,
    notes: ['GLASS_COLD_ENTRY'],
  },
  {
    name: 'a jug from a cold store of 2 degC into 60 degC, then a rinse of 12 degC',
    source: arithmetic,
    inputs: { temperatures: [275.15, 333.15, 285.15] },
    outputs: { largestRise: 58, largestFall: 48, designMargin: -23, testMargin: -6 },
    tolerance: exact,
    notes: ['GLASS_OVER_DESIGN', 'GLASS_OVER_TEST'],
  },
];
