import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, epanetEngine } from './sources.ts';

export const reynoldsNumberCases: readonly SheetCase[] = [
  {
    name: 'hook-up pipe of 27.3 mm at 10 degC',
    source: epanetEngine,
    inputs: { velocity: 1.1864, bore: 0.0273, kinematicViscosity: 1.3063e-6 },
    outputs: { reynolds: 24794 },
    tolerance: { relative: 1e-4, reason: 'printed digits' },
  },
  {
    name: 'cold water in a 4 mm tube',
    source: arithmetic,
    inputs: { velocity: 0.39789, bore: 0.004, kinematicViscosity: 1.51822e-6 },
    outputs: { reynolds: 1048.3 },
    tolerance: { relative: 1e-4, reason: 'printed digits' },
    notes: ['REYNOLDS_LAMINAR'],
  },
];
