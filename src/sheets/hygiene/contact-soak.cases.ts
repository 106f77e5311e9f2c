import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const contactSoakCases: readonly SheetCase[] = [
  {
    name: 'four stations of 12 s, 4 s above the liquid: 48 s and 44 s; 120 s ask an index of 31 s',
    source: script,
    inputs: { stations: 4, index: 12, emptying: 4, required: 120 },
    outputs: { residence: 48, contact: 44, leastIndex: 31 },
    tolerance: { relative: 1e-12, reason: 'exact' },
  },
];
