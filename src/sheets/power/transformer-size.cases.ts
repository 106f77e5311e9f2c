import type { SheetCase } from '../sheet-case.ts';
import { machineExample } from './sources.ts';
import { transformerSizeTable } from './transformer-sizes.ts';

export const transformerSizeCases: readonly SheetCase[] = [
  {
    name: 'machine of four motors: 61.5 A at 208 V is 22.1 kVA; with 20 % spare 26.6 kVA, so 30 kVA',
    source: machineExample,
    inputs: { voltage: 208, current: 61.5, spare: 0.2, list: 'us' },
    outputs: { needed: 26.59e3, size: 30e3 },
    tolerance: { relative: 1e-3, reason: 'four digits' },
    notes: ['CAUTION_ELECTRICAL', 'TRANSFORMER_LIST_US', 'TRANSFORMER_CHANGES_NO_FREQUENCY'],
  },
  {
    name: 'selection table: 75 kVA carries 208.2 A at 208 V',
    source: transformerSizeTable,
    inputs: { voltage: 208, current: 208, spare: 0, list: 'us' },
    outputs: { size: 75e3, ratedCurrent: 208.2 },
    tolerance: { relative: 5e-4, reason: 'four digits' },
  },
  {
    name: 'selection table: 160 kVA is the IEC size for 200 A at 400 V',
    source: transformerSizeTable,
    inputs: { voltage: 400, current: 200, spare: 0, list: 'iec' },
    outputs: { size: 160e3, needed: 138.56e3 },
    tolerance: { relative: 1e-3, reason: 'five digits' },
  },
];
