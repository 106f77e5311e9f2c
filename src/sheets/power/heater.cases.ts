import type { SheetCase } from '../sheet-case.ts';

const ohm = { title: 'Ohm’s law', place: 'worked apart from this program', mark: 'computed' } as const;

export const heaterCases: readonly SheetCase[] = [
  {
    name: '9 kW of 230 V on 208 V: 7.36 kW, 20.43 A',
    source: ohm,
    inputs: {
      power: 9000,
      ratedVoltage: 230,
      supplyVoltage: 208,
      phases: 'three-phase',
      connection: 'unchanged',
    },
    outputs: { power: 7360, current: 20.43, heatUpTime: 1.2227 },
    tolerance: { relative: 5e-3, reason: 'as stated with the figures' },
    notes: ['CAUTION_ELECTRICAL', 'HEATER_SLOW'],
  },
  {
    name: '9 kW at 208 V: 24.98 A',
    source: ohm,
    inputs: {
      power: 9000,
      ratedVoltage: 208,
      supplyVoltage: 208,
      phases: 'three-phase',
      connection: 'unchanged',
    },
    outputs: { power: 9000, current: 24.98 },
    tolerance: { relative: 5e-4, reason: 'four digits' },
  },
  {
    name: 'elements of 230 V in delta are right in star at 400 V: 230.9 V each',
    source: ohm,
    inputs: {
      power: 9000,
      ratedVoltage: 230,
      supplyVoltage: 400,
      phases: 'three-phase',
      connection: 'delta-to-star',
    },
    outputs: { elementVoltage: 230.94 / 230, power: 9073.7 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
  },
  {
    name: 'delta to star on the same supply: a third of the power and of the line current',
    source: ohm,
    inputs: {
      power: 9000,
      ratedVoltage: 400,
      supplyVoltage: 400,
      phases: 'three-phase',
      connection: 'delta-to-star',
    },
    outputs: { power: 3000, current: 4.3301 },
    tolerance: { relative: 1e-4, reason: 'five digits' },
  },
];
