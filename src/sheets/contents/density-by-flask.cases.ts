import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

export const densityByFlaskCases: readonly SheetCase[] = [
  {
    name: 'a flask of 100 mL takes 99.7156 g of water at 20 degC: 998.2067 kg/m3',
    source: weighingScript,
    inputs: { full: 0.15621563, empty: 0.0565, volume: 1e-4 },
    outputs: { inAir: 997.1563, density: 998.2067 },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
  },
];
