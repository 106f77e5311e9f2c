import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

export const densityInAirCases: readonly SheetCase[] = [
  {
    name: 'water at 20 degC: a litre of 998.2067 g shows 997.156 g, 0.1053 % less',
    source: weighingScript,
    inputs: { density: 998.2067 },
    outputs: { inAir: 997.1563 },
    tolerance: { relative: 1e-6, reason: 'printed digits' },
  },
];
