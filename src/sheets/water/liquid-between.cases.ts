import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const liquidBetweenCases: readonly SheetCase[] = [
  {
    name: 'IAPWS table of water: 15 degC from its rows at 10 and 20 degC',
    source: iapws95,
    inputs: {
      temperature: 288.15,
      lowTemperature: 283.15,
      highTemperature: 293.15,
      lowDensity: 999.703,
      highDensity: 998.207,
      lowViscosity: 1305.9e-6,
      highViscosity: 1001.6e-6,
    },
    outputs: { density: 999.103, viscosity: 1137.57e-6 },
    tolerance: { relative: 0.01, reason: 'water bends between two rows ten degrees apart' },
  },
];
