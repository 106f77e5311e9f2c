import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

export const vesselAt20Cases: readonly SheetCase[] = [
  {
    name: 'a glass bottle of 500.372 mL at 22 degC holds 500.345 mL at 20 degC',
    source: weighingScript,
    inputs: { volume: 500.372e-6, temperature: 295.15, expansion: 27e-6 },
    outputs: { capacity: 500.345e-6 },
    tolerance: { absolute: 1e-9, reason: 'printed digits' },
    notes: ['VESSEL_NOT_PRODUCT'],
  },
];
