import type { SheetCase } from '../sheet-case.ts';
import { hydraulicsVignette } from './sources.ts';

export const drainDepthCases: readonly SheetCase[] = [
  {
    name: 'hydraulics vignette: 10 L/s in 0.2 m at 0.001',
    source: hydraulicsVignette,
    inputs: { flow: 0.01, bore: 0.2, slope: 0.001, manning: 0.013 },
    outputs: { depth: 0.15783, filling: 0.78915, velocity: 0.3761, residual: 0 },
    tolerance: { relative: 2e-4, absolute: 1e-12, reason: 'four to five printed digits' },
    notes: ['DRAIN_FULL', 'DRAIN_SLOW'],
  },
];
