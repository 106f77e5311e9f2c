import type { SheetCase } from '../sheet-case.ts';
import { iapws95 } from './sources.ts';

export const npshCases: readonly SheetCase[] = [
  {
    name: 'handbook example: 34 ft of air, 15 ft flooded, 0.6 ft of vapour, 2.4 ft lost: 46 ft',
    source: {
      title: 'water and wastewater handbook, NPSH examples',
      place: 'public transcription',
      mark: 'read',
    },
    inputs: {
      atmosphere: 10.3632 * 9806.65,
      vapourPressure: 0.18288 * 9806.65,
      suctionHeight: 4.572,
      suctionLoss: 0.73152,
      density: 1000,
    },
    outputs: { npsh: 14.0208 },
    tolerance: { relative: 1e-4, reason: 'rounded feet' },
  },
  {
    name: '20 degC at sea level, flooded 0.5 m, 0.8 m lost',
    source: iapws95,
    inputs: {
      atmosphere: 101325,
      vapourPressure: 2339.3,
      suctionHeight: 0.5,
      suctionLoss: 0.8,
      density: 998.207,
    },
    outputs: { npsh: 9.812 },
    tolerance: { relative: 1e-4, reason: 'four printed digits' },
  },
  {
    name: '60 degC at 500 m, lift 2 m, 1 m lost',
    source: iapws95,
    inputs: {
      atmosphere: 95460.8,
      vapourPressure: 19946,
      suctionHeight: -2,
      suctionLoss: 1,
      density: 983.196,
    },
    outputs: { npsh: 4.832 },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
  },
];
