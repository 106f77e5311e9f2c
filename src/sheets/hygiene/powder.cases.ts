import type { SheetCase } from '../sheet-case.ts';
import { cdcDilution, script } from './sources.ts';

export const powderCases: readonly SheetCase[] = [
  {
    name: '35 % powder for 0.5 %: 14.3 g/L',
    source: cdcDilution,
    inputs: { strength: 0.35, wanted: 5, volume: 0.001 },
    outputs: { dose: 14.3 },
    tolerance: { relative: 2e-3, reason: 'three printed digits' },
  },
  {
    name: '0.5 % in 7 L from 35 %: 100 g',
    source: script,
    inputs: { strength: 0.35, wanted: 5, volume: 0.007 },
    outputs: { mass: 0.1 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
