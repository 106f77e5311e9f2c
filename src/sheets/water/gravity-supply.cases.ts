import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const gravitySupplyCases: readonly SheetCase[] = [
  {
    name: 'a metre of water at 20 degC: 9 789.1 Pa',
    source: iapws95,
    inputs: { surfaceHeight: 3, height: 2, density: 998.207, planArea: 1.2, flow: 0.0012, makeUp: 0.0006 },
    outputs: { pressure: 9789.1, fall: 0.0005 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
];
