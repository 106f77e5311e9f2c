import type { SheetCase } from '../sheet-case.ts';
import { independentScript } from './sources.ts';

export const faultBehindTransformerCases: readonly SheetCase[] = [
  {
    name: '13.8 kV with 15 kA, 1000 kVA, 5 %, to 208Y/120 V: 52 583 A by megavolt-amperes',
    source: {
      title: 'textbook on electrical systems of buildings, megavolt-ampere method',
      place: 'solved example with equations 8.13 to 8.17, public page',
      mark: 'read',
    },
    inputs: {
      available: 15e3,
      sourceRatio: 5,
      primary: 13.8e3,
      apparentPower: 1e6,
      impedance: 0.05,
      reactanceRatio: 5,
      secondary: 208,
    },
    outputs: { arithmetic: 52583, current: 52583 },
    tolerance: { relative: 2e-4, reason: 'the sum is printed to four digits of megavolt-amperes' },
    notes: ['CAUTION_ELECTRICAL', 'FAULT_MOTORS_ADD'],
  },
  {
    name: '30 059 A at 480 V through 225 kVA of 1.2 % to 208 V: 29 731 A',
    source: {
      title: 'point-to-point method, second transformer of the system',
      place: 'worked example: f 1.333, M 0.4286',
      mark: 'memory',
    },
    inputs: {
      available: 30059,
      sourceRatio: 5,
      primary: 480,
      apparentPower: 225e3,
      impedance: 0.012,
      reactanceRatio: 5,
      secondary: 208,
    },
    outputs: { arithmetic: 29731 },
    tolerance: { relative: 3e-4, reason: 'M is printed to four digits' },
  },
  {
    name: '6 kA, X/R 0.8, at 208 V through 45 kVA of 3 %, X/R 2.5, to 480 V: 1170 A, at most 2005 A',
    source: independentScript,
    inputs: {
      available: 6000,
      sourceRatio: 0.8,
      primary: 208,
      apparentPower: 45e3,
      impedance: 0.03,
      tolerance: 'least-0.9',
      reactanceRatio: 2.5,
      secondary: 480,
    },
    outputs: { current: 1169.929, arithmetic: 1131.931, most: 2004.688 },
    tolerance: { relative: 1e-6, reason: 'seven digits' },
  },
];
