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
  {
    name: 'preferred numbers R10: 36.5 A at 400 V with 20 % spare is 30.3 kVA, so 31.5 kVA',
    source: {
      title: 'ISO 3',
      edition: '1973',
      place: 'series R10: 10, 12.5, 16, 20, 25, 31.5, 40',
      mark: 'memory',
    },
    inputs: { voltage: 400, current: 36.5, spare: 0.2, list: 'iec' },
    outputs: { needed: 30.345e3, size: 31.5e3 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
    notes: [
      'CAUTION_ELECTRICAL',
      'TRANSFORMER_LIST_IEC',
      'TRANSFORMER_SMALL_FROM_MEMORY',
      'TRANSFORMER_CHANGES_NO_FREQUENCY',
    ],
  },
];
