import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const manifoldPressureCases: readonly SheetCase[] = [
  {
    name: 'juice of 1 045 kg/m3, 2.85 m of fall less 6 500 Pa',
    source: arithmetic,
    inputs: { sourcePressure: 0, sourceHeight: 4.2, manifoldHeight: 1.35, runLoss: 6500, density: 1045 },
    outputs: { manifoldPressure: 22706.6553625 },
    tolerance: { relative: 1e-10, reason: 'printed digits' },
  },
];
