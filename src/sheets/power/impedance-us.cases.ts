import type { SheetCase } from '../sheet-case.ts';
import { impedanceTable } from './us-conductors.ts';

const perKilofoot = 1 / 304.8;
const at75 = { temperature: 348.15, frequency: 60, powerFactor: 0.85 };

export const impedanceUsCases: readonly SheetCase[] = [
  {
    name: 'table 9, 4/0 AWG in steel: effective 0.080 ohm/1000 ft at 0.85',
    source: impedanceTable,
    inputs: { ...at75, size: '4/0 AWG', conduit: 'steel' },
    outputs: { effective: 0.08 * perKilofoot },
    tolerance: { relative: 0.01, reason: 'printed to two digits' },
    notes: ['CAUTION_ELECTRICAL', 'NEC_CHAPTER_9'],
  },
  {
    name: 'table 9, 250 kcmil in steel: effective 0.073 ohm/1000 ft, not 0.071 of mixed columns',
    source: impedanceTable,
    inputs: { ...at75, size: '250 kcmil', conduit: 'steel' },
    outputs: { effective: 0.073 * perKilofoot },
    tolerance: { relative: 0.015, reason: 'printed to two digits' },
  },
  {
    name: 'table 9, 3/0 AWG in steel: 0.259 + j0.171 ohm/km',
    source: impedanceTable,
    inputs: { ...at75, size: '3/0 AWG', conduit: 'steel' },
    outputs: { resistance: 0.259e-3, reactance: 0.171e-3 },
    tolerance: { relative: 1e-9, reason: 'figures of a table' },
  },
  {
    name: 'copper at 25 °C has 1/(1 + 0.00393 x 55) x (1 + 0.00393 x 5) of its resistance at 75 °C: 0.8385; reactance at 50 Hz is 5/6',
    source: {
      title: 'temperature coefficient of copper, 0.00393 at 20 °C',
      place: 'hand calculation',
      mark: 'computed',
    },
    inputs: { size: '6 AWG', conduit: 'pvc', temperature: 298.15, frequency: 50, powerFactor: 1 },
    outputs: { resistance: 1.61e-3 * 0.83852, reactance: (0.167e-3 * 5) / 6 },
    tolerance: { relative: 2e-4, reason: '0.00323 is rounded to three digits' },
  },
];
