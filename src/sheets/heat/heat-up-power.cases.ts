import type { SheetCase } from '../sheet-case.ts';
import { heatEnergyPages, iapws95, odeSolver } from './sources.ts';

const bath = { volume: 0.4, start: 288.15, end: 333.15, time: 5400 } as const;

export const heatUpPowerCases: readonly SheetCase[] = [
  {
    name: '400 L from 15 to 60 degC in 1.5 h: 13.92 kW',
    source: iapws95,
    inputs: bath,
    outputs: { power: 13920, powerWithoutLoss: 13920 },
    tolerance: { relative: 6e-4, reason: 'four printed digits' },
    notes: ['HEAT_LOSSES_LEFT_OUT'],
  },
  {
    name: '10 L of water in 2 kg of aluminium from 0 to 100 degC in an hour: 1.217 kW',
    source: { ...heatEnergyPages, place: '10 L of water and 2 kg of aluminium' },
    inputs: { volume: 0.01, start: 273.15, end: 373.15, metalMass: 2, metalHeat: 910, time: 3600 },
    outputs: { powerWithoutLoss: 1217 },
    tolerance: { relative: 4e-3, reason: 'the page takes one specific heat of water and 1 kg/L' },
  },
  {
    name: 'the same 400 L with 120 kg of steel against 60 W/K: 15.64 kW',
    source: odeSolver,
    inputs: { ...bath, metalMass: 120, metalHeat: 500, loss: 60, ambient: 291.15 },
    outputs: { power: 15638.2347, powerWithoutLoss: 14426.1482, energyTaken: 15638.2347 * 5400 },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
  },
];
