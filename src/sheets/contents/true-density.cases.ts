import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

export const trueDensityCases: readonly SheetCase[] = [
  {
    name: 'water at 20 degC: 997.1563 g a litre in air are 998.2067 kg/m3',
    source: weighingScript,
    inputs: { inAir: 997.1563 },
    outputs: { density: 998.2067 },
    tolerance: { relative: 1e-7, reason: 'printed digits' },
  },
];
