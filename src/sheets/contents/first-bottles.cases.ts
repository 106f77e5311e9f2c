import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

export const firstBottlesCases: readonly SheetCase[] = [
  {
    name: 'four bottles, 8 to 12.5 mL short: 10.15 mL and 3.178 mL either way with 95 %',
    source: statisticsScript,
    inputs: { misses: [-8e-6, -12.5e-6, -9.1e-6, -11e-6] },
    outputs: {
      mean: -10.15e-6,
      lowest: -12.5e-6,
      highest: -8e-6,
      spread: 1.9974984355e-6,
      halfWidth: 3.178465758e-6,
    },
    tolerance: { relative: 1e-9, reason: 'double precision' },
    notes: ['FIRST_BOTTLES_FEW'],
  },
];
