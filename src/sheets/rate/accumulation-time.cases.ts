import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const accumulationTimeCases: readonly SheetCase[] = [
  {
    name: '30 bottles at 675/h last 160 s',
    source: arithmetic,
    inputs: { bottles: 30, rate: 675 / 3600 },
    outputs: { time: 160 },
    tolerance: { relative: 1e-12, reason: 'one division' },
    notes: ['ACCUMULATION_FULL'],
  },
];
