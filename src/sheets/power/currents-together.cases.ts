import type { SheetCase } from '../sheet-case.ts';
import { machineExample } from './sources.ts';

export const currentsTogetherCases: readonly SheetCase[] = [
  {
    name: '5, 3, 1 and 1 hp and a heater of 24.98 A at 208 V run at 61.5 A together',
    source: machineExample,
    inputs: { currents: [16.7, 10.6, 4.6, 4.6, 24.98] },
    outputs: { current: 61.5 },
    tolerance: { absolute: 0.05, reason: 'printed to a tenth of an ampere' },
    notes: ['CAUTION_ELECTRICAL', 'SUM_CONSERVATIVE'],
  },
];
