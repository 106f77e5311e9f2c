import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, kvStandardRead } from './sources.ts';

export const valveFlowCases: readonly SheetCase[] = [
  {
    name: 'a valve of Kv 1.2 at 0.4 bar with juice of 1 045 kg/m3',
    source: arithmetic,
    inputs: { kv: 1.2, pressureDifference: 40000, density: 1045 },
    outputs: { flow: 0.000206229408 },
    tolerance: { relative: 1e-8, reason: 'printed digits' },
  },
  {
    name: 'definition of Kv: water of 1 000 kg/m3 at 1 bar',
    source: kvStandardRead,
    inputs: { kv: 3.6, pressureDifference: 100000, density: 1000 },
    outputs: { flow: 0.001 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
