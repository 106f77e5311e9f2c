import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const inputs = { rate: 600 / 3600, carry: 4e-6, carried: 20, overflow: 5e-5, volume: 0.06 };

export const sumpCases: readonly SheetCase[] = [
  {
    name: '600 bottles/h, 4 mL at 20 g/L, overflow 0.05 L/s, 60 L: 263.2 mg/L, time constant 1184 s',
    source: script,
    inputs,
    outputs: { steady: 0.2632, timeConstant: 1184, sampleAfter: 3552 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
    notes: ['STEADY_AFTER_3'],
  },
  {
    name: 'after one time constant it has 63.2 % of that, 166.4 mg/L',
    source: script,
    inputs: { ...inputs, time: 1184.21 },
    outputs: { now: 0.1664 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
];
