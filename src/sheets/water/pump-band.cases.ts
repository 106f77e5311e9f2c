import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const pumpBandCases: readonly SheetCase[] = [
  {
    name: '2 L/s and 10 starts an hour: simulated at half the flow in, a cycle takes 360 s',
    source: arithmetic,
    inputs: { pumpFlow: 0.002, starts: 10 / 3600 },
    outputs: { volume: 0.18 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
