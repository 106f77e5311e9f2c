import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const pressureVesselCases: readonly SheetCase[] = [
  {
    name: '100 L vessel, pre-charge 2.5, band 3 to 5 bar absolute, by Boyle: gas from 50 to 83.3 L',
    source: arithmetic,
    inputs: { vessel: 0.1, preCharge: 250000, lowest: 300000, highest: 500000 },
    outputs: { draw: 0.1 / 3 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
