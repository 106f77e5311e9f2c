import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

const rows = [
  [0, 373.124296, 419057.733, 2256471.592, 2675529.326, 1 / 1.67320116],
  [1e5, 393.568957, 505591.549, 2200942.078, 2706533.628, 1 / 0.880223903],
  [2e5, 406.822758, 562069.308, 2163016.005, 2725085.313, 1 / 0.60326102],
  [3e5, 416.877602, 605167.089, 2133036.296, 2738203.385, 1 / 0.460947791],
  [5e5, 432.062701, 670751.533, 2085487.225, 2756238.757, 1 / 0.314925877],
] as const;

const printed = [
  [0, 99.97, 2256.5, 2675.5],
  [1e5, 120.4, 2201.0, 2706.5],
  [2e5, 133.7, 2163.0, 2725.1],
  [3e5, 143.7, 2133.0, 2738.2],
  [5e5, 158.9, 2085.4, 2756.2],
] as const;

export const saturatedSteamCases: readonly SheetCase[] = [
  ...rows.map(([gauge, temperature, liquidHeat, latentHeat, vapourHeat, vapourDensity]) => ({
    name: `${gauge / 1e5} bar over 1.01325 bar, by IAPWS-95`,
    source: iapws95,
    inputs: { pressure: gauge },
    outputs: { temperature, liquidHeat, latentHeat, vapourHeat, vapourDensity },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
    notes: ['CAUTION_STEAM'],
  })),
  ...printed.map(([gauge, celsius, latent, vapour]) => ({
    name: `${gauge / 1e5} bar over 1.01325 bar, by another implementation of IF97`,
    source: { title: 'IAPWS-IF97', place: 'independent implementation', mark: 'computed' as const },
    inputs: { pressure: gauge, atmosphere: 101_325 },
    outputs: { temperature: celsius + 273.15, latentHeat: latent * 1e3, vapourHeat: vapour * 1e3 },
    tolerance: { relative: 1.4e-4, reason: 'four printed digits of the temperature' },
  })),
  {
    name: '5 bar at 1 500 m (84.5 kPa): 157.8 degC, 2089 kJ/kg',
    source: iapws95,
    inputs: { pressure: 5e5, atmosphere: 84_500 },
    outputs: { temperature: 430.956381, latentHeat: 2089051.665 },
    tolerance: { relative: 2e-4, reason: 'IAPWS-95 against IF97' },
  },
];
