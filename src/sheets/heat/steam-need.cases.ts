import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const steamNeedCases: readonly SheetCase[] = [
  {
    name: '14 kW through a coil at 2 bar gauge: 23.3 kg/h',
    source: iapws95,
    inputs: { heat: 14_000, pressure: 2e5, use: 'indirect', bath: 333.15 },
    outputs: { steam: 0.006472444, heatGiven: 2163016.005, steamTemperature: 406.822758, waterAdded: 0 },
    tolerance: { relative: 2e-4, absolute: 1e-12, reason: 'IAPWS-95 against IF97' },
    notes: ['CAUTION_STEAM'],
  },
  {
    name: '14 kW blown into a bath of 60 degC at 2 bar gauge: 20.4 kg/h, which stay in it',
    source: iapws95,
    inputs: { heat: 14_000, pressure: 2e5, use: 'direct', bath: 333.15 },
    outputs: { steam: 0.005659069, waterAdded: 5.755790774e-6 },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['STEAM_DIRECT'],
  },
];
