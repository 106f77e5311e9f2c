import type { SheetCase } from '../sheet-case.ts';
import { openTankTable } from './sources.ts';

const computed = {
  title: 'Carrier form with the vapour of IAPWS-95',
  place: 'independent script',
  mark: 'computed',
} as const;

export const openTankEvaporationCases: readonly SheetCase[] = [
  {
    name: '1.2 m2 at 70 degC, air 25 degC, 60 % RH, 0.15 m/s: 3.54 kW, 5.46 kg/h',
    source: computed,
    inputs: { bath: 343.15, surface: 1.2, room: 298.15, relativeHumidity: 0.6, velocity: 0.15 },
    outputs: { heat: 3541.5426, evaporated: 0.00151800052, low: 2833.234, high: 4249.851 },
    tolerance: { relative: 3e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['OPEN_TANK_ROUGH'],
  },
  {
    name: '2 m2 at 60 degC in still air of 20 degC, 50 % RH',
    source: computed,
    inputs: { bath: 333.15, surface: 2, room: 293.15, relativeHumidity: 0.5, velocity: 0 },
    outputs: { heat: 3342.266, evaporated: 0.0014176233 },
    tolerance: { relative: 3e-4, reason: 'IAPWS-95 against IF97' },
  },
  {
    name: 'against the column of an open tank table at 160 degF: 1100 Btu/(h ft2)',
    source: { ...openTankTable, place: 'row 160 degF, evaporation; 50 % RH taken' },
    inputs: { bath: 344.2611, surface: 1, room: 288.7056, relativeHumidity: 0.5, velocity: 0.2 },
    outputs: { heat: 3470.05 },
    tolerance: { relative: 0.2, reason: 'the form and the table are each good to about 20 %' },
  },
];
