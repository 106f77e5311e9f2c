import type { SheetCase } from '../sheet-case.ts';
import { heatEnergyPages, odeSolver } from './sources.ts';

const bath = { volume: 0.4, start: 288.15, end: 333.15 } as const;

export const heatUpTimeCases: readonly SheetCase[] = [
  {
    name: '2 kg of water from 20 to 60 degC: 336 kJ',
    source: { ...heatEnergyPages, place: '2 kg of water, c 4.2 kJ/(kg K)' },
    inputs: { volume: 2 / 998.2, start: 293.15, end: 333.15, power: 1000 },
    outputs: { energy: 336e3 },
    tolerance: { relative: 6e-3, reason: 'the page takes 4.2 where IAPWS has 4.18 kJ/(kg K)' },
    notes: ['HEAT_LOSSES_LEFT_OUT', 'CAUTION_HOT_WATER'],
  },
  {
    name: '10 L of water in 2 kg of aluminium from 0 to 100 degC in an hour: 1.2 kW (1.217)',
    source: { ...heatEnergyPages, place: '10 L of water and 2 kg of aluminium' },
    inputs: { volume: 0.01, start: 273.15, end: 373.15, metalMass: 2, metalHeat: 910, power: 1217 },
    outputs: { timeWithoutLoss: 3600, time: 3600 },
    tolerance: { relative: 4e-3, reason: 'the page takes one specific heat of water and 1 kg/L' },
  },
  {
    name: '400 L and 120 kg of steel, 9 kW against 60 W/K: 2.79 h',
    source: odeSolver,
    inputs: { ...bath, metalMass: 120, metalHeat: 500, power: 9000, loss: 60, ambient: 291.15 },
    outputs: {
      time: 10049.448,
      timeWithoutLoss: 8655.689,
      energy: 77901200.5,
      reached: 333.15,
      ceiling: 373.15,
      holdingPower: 2520,
    },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
  },
  {
    name: '2 kW against 60 W/K never gets over 51.3 degC: 95 % of the rise after 23.2 h',
    source: odeSolver,
    inputs: { ...bath, power: 2000, loss: 60, ambient: 291.15 },
    outputs: { time: 83438.0235, reached: 273.15 + 49.516666667, ceiling: 273.15 + 51.333333333 },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['HEAT_NEVER_REACHED'],
  },
];
