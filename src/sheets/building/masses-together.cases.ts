import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const massesTogetherCases: readonly SheetCase[] = [
  {
    name: 'a section of 1450 kg on 60 kg of skates is 1510 kg, 3329 lb',
    source: arithmetic,
    inputs: { masses: [1450, 60] },
    // 1510 / 0.45359237
    outputs: { mass: 3328.98 * 0.45359237 },
    tolerance: { relative: 2e-6, reason: 'six digits' },
    notes: ['CAUTION_MOVING'],
  },
];
