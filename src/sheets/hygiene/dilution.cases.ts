import type { SheetCase } from '../sheet-case.ts';
import { cdcDilution, script } from './sources.ts';

export const dilutionCases: readonly SheetCase[] = [
  {
    name: '3.5 % to 0.5 %: 6 parts of water',
    source: cdcDilution,
    inputs: { strong: 35, weak: 5, final: 0.007 },
    outputs: { parts: 6 },
    tolerance: { relative: 1e-9, reason: 'exact' },
    notes: ['CAUTION_CHEMICAL'],
  },
  {
    name: '5 % to 0.1 %: 49 parts of water',
    source: cdcDilution,
    inputs: { strong: 50, weak: 1, final: 0.05 },
    outputs: { parts: 49 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
  {
    name: '200 L at 50 mg/L from 125 g/L: 80.0 mL and 199.92 L of water',
    source: script,
    inputs: { strong: 125, weak: 0.05, final: 0.2 },
    outputs: { concentrate: 80e-6, water: 0.19992 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
