import type { SheetCase } from '../sheet-case.ts';
import { horsepower } from './horsepower.ts';

const kWh = 3.6e6;
const hand = {
  title: 'definition of energy from power',
  place: 'hand calculation',
  mark: 'computed',
} as const;

export const energyShiftCases: readonly SheetCase[] = [
  {
    name: '5 hp at a load factor of 0.75, efficiency 0.895, 8 h: 25.0 kWh',
    source: hand,
    inputs: {
      hours: 28800,
      motorPower: [5 * horsepower],
      loadFactor: [0.75],
      efficiency: [0.895],
      motorDuty: [1],
      heaterPower: [],
      heaterDuty: [],
      standby: 0,
    },
    outputs: { motors: 25 * kWh, energy: 25 * kWh },
    tolerance: { relative: 1e-3, reason: 'three digits' },
    notes: ['CAUTION_ELECTRICAL', 'ENERGY_NOT_DEMAND'],
  },
  {
    name: 'heater of 9 kW half of 8 h and 0.5 kW of standby: 36 and 4 kWh, 9.5 kW together',
    source: hand,
    inputs: {
      hours: 28800,
      motorPower: [],
      loadFactor: [],
      efficiency: [],
      motorDuty: [],
      heaterPower: [9000],
      heaterDuty: [0.5],
      standby: 500,
    },
    outputs: { heaters: 36 * kWh, energy: 40 * kWh, together: 9500 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles' },
  },
];
