import type { SheetCase } from '../sheet-case.ts';
import { independentScript } from './sources.ts';

export const faultVectorCases: readonly SheetCase[] = [
  {
    name: '500 kVA, 480 V, 5.75 %, X/R 5, 60 m of 3/0 AWG: 10 459 A at the terminals, 6637 A at the end',
    source: independentScript,
    inputs: {
      apparentPower: 500e3,
      voltage: 480,
      impedance: 0.0575,
      tolerance: 'as-marked',
      reactanceRatio: 5,
      length: 60,
      resistance: 0.259e-3,
      reactance: 0.171e-3,
      parallel: 1,
    },
    outputs: { terminals: 10459, current: 6637, endRatio: 1.7477 },
    tolerance: { relative: 5e-3, reason: 'as stated with the figures' },
    notes: ['CAUTION_ELECTRICAL', 'COLD_CONDUCTOR'],
  },
  {
    name: '250 kVA, 400 V, 4 %, X/R 3, 50 m of 25 mm2: 4384 A as vectors, 3715 A as numbers',
    source: independentScript,
    inputs: {
      apparentPower: 250e3,
      voltage: 400,
      impedance: 0.04,
      tolerance: 'as-marked',
      reactanceRatio: 3,
      length: 50,
      resistance: 0.727e-3,
      reactance: 0.08e-3,
      parallel: 1,
    },
    outputs: { current: 4384, endRatio: 0.6364, arithmetic: 3715 },
    tolerance: { relative: 1e-3, reason: 'four digits' },
    notes: ['FAULT_ARITHMETIC_LOW'],
  },
  {
    name: '300 kVA, 208 V, 1.8 %, X/R 3.5, 20 ft of 2 x 500 kcmil in steel: 38 239 A',
    source: independentScript,
    inputs: {
      apparentPower: 300e3,
      voltage: 208,
      impedance: 0.02,
      tolerance: 'least-0.9',
      reactanceRatio: 3.5,
      length: 6.096,
      resistance: 0.095e-3,
      reactance: 0.157e-3,
      parallel: 2,
    },
    outputs: { current: 38239 },
    tolerance: { relative: 2e-3, reason: 'the impedances are printed to two and three digits' },
  },
];
