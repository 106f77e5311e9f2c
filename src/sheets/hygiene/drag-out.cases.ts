import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const dragOutCases: readonly SheetCase[] = [
  {
    name: 'three bottles that carry 3, 4 and 5 g: 4 mL with a standard deviation of 1 mL',
    source: script,
    inputs: { drained: [0.503, 0.514, 0.495], dry: [0.5, 0.51, 0.49] },
    outputs: { carry: 4e-6, deviation: 1e-6, most: 5e-6 },
    tolerance: { relative: 1e-9, reason: 'exact' },
    notes: ['DRAG_OUT_FEW'],
  },
];
