import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

export const densityAtReferenceCases: readonly SheetCase[] = [
  {
    name: 'water between 24 and 20 degC with its mean expansion of 2.28e-4 1/K: 998.207 kg/m3',
    source: weighingScript,
    inputs: { density: 997.2988, temperature: 297.15, reference: 293.15, expansion: 2.2759e-4 },
    outputs: { referenceDensity: 998.2067, ratio: 0.99909 },
    tolerance: { relative: 1e-6, reason: 'printed digits of the densities' },
  },
];
