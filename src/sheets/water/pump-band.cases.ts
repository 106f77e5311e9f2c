import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const pumpBandCases: readonly SheetCase[] = [
  {
    name: '2 L/s, 10 starts an hour: at 1 L/s inflow 0.18 m3 fills in 180 s and empties in 180 s',
    source: arithmetic,
    inputs: { pumpFlow: 0.002, starts: 10 / 3600 },
    outputs: { volume: 0.18 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
