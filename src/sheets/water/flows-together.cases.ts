import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const flowsTogetherCases: readonly SheetCase[] = [
  {
    name: '12, 15 and 18 L/min are 45 L/min, 11.89 US gal/min',
    source: arithmetic,
    inputs: { flows: [12 / 60_000, 15 / 60_000, 18 / 60_000] },
    // 45 / 3.785411784 L in a US gallon of 231 cubic inches
    outputs: { flow: (11.887742 * 3.785411784e-3) / 60 },
    tolerance: { relative: 1e-7, reason: 'eight digits' },
  },
];
