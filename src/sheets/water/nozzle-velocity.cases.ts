import type { SheetCase } from '../sheet-case.ts';
import { britannica } from './sources.ts';

export const nozzleVelocityCases: readonly SheetCase[] = [
  {
    name: 'rounded mouth of 12 mm under 1.2 m: 0.5322 L/s leave at 0.97 of 4.851 m/s',
    source: britannica,
    inputs: { flow: 0.5322e-3, bore: 0.012 },
    outputs: { velocity: 4.7055 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
    notes: ['NOZZLE_FAST'],
  },
];
