import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const indexFromRateCases: readonly SheetCase[] = [
  {
    name: 'five lanes at 1500 bottles/h index every 60 L/R = 12 s',
    source: script,
    inputs: { lanes: 5, rate: 1500 / 3600 },
    outputs: { index: 12 },
    tolerance: { relative: 1e-12, reason: 'one division' },
  },
];
