import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const aftercoolerOutletCases: readonly SheetCase[] = [
  {
    name: 'a room of 30 degC and an approach of 10 K: 40 degC',
    source: script,
    inputs: { room: 303.15, approach: 10 },
    outputs: { temperature: 313.15 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'a room of 86 degF and an approach of 18 degF: 104 degF',
    source: script,
    inputs: { room: 303.15, approach: 10 },
    outputs: { temperature: (104 + 459.67) / 1.8 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];
