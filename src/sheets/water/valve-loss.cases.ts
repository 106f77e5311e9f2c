import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const valveLossCases: readonly SheetCase[] = [
  {
    name: 'a valve of Kv 1.2 at 0.3 L/s with juice of 1 045 kg/m3',
    source: arithmetic,
    inputs: { kv: 1.2, flow: 0.0003, density: 1045 },
    outputs: { loss: 84645 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles' },
  },
];
