import type { SheetCase } from '../sheet-case.ts';
import { iecResistanceTable } from './iec-conductors.ts';

const exact = { relative: 1e-9, reason: 'a figure of a table' } as const;

export const resistanceIecCases: readonly SheetCase[] = [
  {
    name: 'IEC 60228: 25 mm2, class 2, 20 °C: 0.727 ohm/km',
    source: iecResistanceTable,
    inputs: { size: '25 mm2', conductorClass: 'class-1-or-2', temperature: 293.15 },
    outputs: { resistance: 0.727e-3 },
    tolerance: exact,
    notes: ['CAUTION_ELECTRICAL', 'IEC_60228'],
  },
  {
    name: 'IEC 60228: 1.5 mm2, class 5, 20 °C: 13.3 ohm/km',
    source: iecResistanceTable,
    inputs: { size: '1.5 mm2', conductorClass: 'class-5', temperature: 293.15 },
    outputs: { resistance: 13.3e-3 },
    tolerance: exact,
  },
  {
    name: '70 °C is 1.197 times 20 °C: 4 mm2 of 4.61 ohm/km',
    source: {
      title: 'temperature coefficient of copper, 0.00393 at 20 °C',
      place: 'hand calculation',
      mark: 'computed',
    },
    inputs: { size: '4 mm2', conductorClass: 'class-1-or-2', temperature: 343.15 },
    outputs: { resistance: 4.61e-3 * 1.197 },
    tolerance: { relative: 5e-4, reason: 'the factor is printed to four digits' },
  },
];
