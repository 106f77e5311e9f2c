import type { SheetCase } from '../sheet-case.ts';
import { machineExample } from './sources.ts';

export const machineSupplyUsCases: readonly SheetCase[] = [
  {
    name: '5, 3, 1 and 1 hp and a heater of 9 kW at 208 V: 71.9 A, 96.0 A so 90 A, running 61.5 A',
    source: machineExample,
    inputs: {
      voltage: 208,
      motors: [16.7, 10.6, 4.6, 4.6],
      devices: [45, 30, 15, 15],
      heating: 24.98,
      apparatus: 0,
    },
    outputs: { ampacity: 71.9, deviceLimit: 96, deviceRating: 90, running: 61.5 },
    tolerance: { absolute: 0.1, reason: 'printed to a tenth of an ampere' },
    notes: ['CAUTION_ELECTRICAL', 'NEC_670', 'DEVICE_FROM_MEMORY'],
  },
  {
    name: 'the same machine draws 22.1 kVA',
    source: machineExample,
    inputs: {
      voltage: 208,
      motors: [16.7, 10.6, 4.6, 4.6],
      devices: [45, 30, 15, 15],
      heating: 24.98,
      apparatus: 0,
    },
    outputs: { apparentPower: 22100 },
    tolerance: { absolute: 100, reason: 'printed to a tenth of a kVA' },
  },
  {
    name: 'the same loads at 460 V ask 32.6 A',
    source: machineExample,
    inputs: {
      voltage: 460,
      motors: [7.6, 4.8, 2.1, 2.1],
      devices: [20, 15, 15, 15],
      heating: 11.296,
      apparatus: 0,
    },
    outputs: { ampacity: 32.6 },
    tolerance: { absolute: 0.1, reason: 'printed to a tenth of an ampere' },
  },
];
