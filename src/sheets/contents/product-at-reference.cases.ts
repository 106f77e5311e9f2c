import type { SheetCase } from '../sheet-case.ts';
import { weighingScript } from './weighing-sources.ts';

const digits = { absolute: 1e-9, reason: 'printed to a microlitre' } as const;

export const productAtReferenceCases: readonly SheetCase[] = [
  {
    name: '500 mL of water dosed at 35 degC are 497.909 mL at 20 degC',
    source: weighingScript,
    inputs: { volume: 500e-6, density: 994.0326, referenceDensity: 998.2067 },
    outputs: { atReference: 497.909e-6 },
    tolerance: digits,
  },
  {
    name: '500 mL of water at 20 degC take 499.120 mL at 5 degC',
    source: weighingScript,
    inputs: { volume: 500e-6, density: 998.2067, referenceDensity: 999.9668 },
    outputs: { atReference: 499.12e-6 },
    tolerance: digits,
  },
  {
    name: 'and 502.100 mL at 35 degC',
    source: weighingScript,
    inputs: { volume: 500e-6, density: 998.2067, referenceDensity: 994.0326 },
    outputs: { atReference: 502.1e-6 },
    tolerance: digits,
  },
];
