import type { SheetCase } from '../sheet-case.ts';
import { pointToPointMethod } from './sources.ts';

export const faultPointToPointCases: readonly SheetCase[] = [
  {
    name: 'worked example: 46 273 A, 208 V, 20 ft of 2 x 500 kcmil in steel: 39 425 A',
    source: pointToPointMethod,
    inputs: {
      available: 46273,
      voltage: 208,
      fault: 'three-phase',
      length: 6.096,
      size: '500 kcmil',
      conduit: 'steel',
      parallel: 2,
    },
    outputs: { current: 39425 },
    tolerance: { relative: 1e-3, reason: 'the example rounds M to three digits' },
    notes: ['CAUTION_ELECTRICAL', 'POINT_TO_POINT_ARITHMETIC'],
  },
  {
    name: 'the same: f 0.174, M 0.852',
    source: pointToPointMethod,
    inputs: {
      available: 46273,
      voltage: 208,
      fault: 'three-phase',
      length: 6.096,
      size: '500 kcmil',
      conduit: 'steel',
      parallel: 2,
    },
    outputs: { ratio: 0.174, multiplier: 0.852 },
    tolerance: { absolute: 6e-4, reason: 'printed to three digits' },
  },
  {
    name: 'the example goes on: 20 ft of 2 AWG in steel: f 1.111, M 0.4736, 18 672 A',
    source: { ...pointToPointMethod, place: 'second step, worked apart from this program', mark: 'computed' },
    inputs: {
      available: 39425,
      voltage: 208,
      fault: 'three-phase',
      length: 6.096,
      size: '2 AWG',
      conduit: 'steel',
      parallel: 1,
    },
    outputs: { ratio: 1.111, multiplier: 0.4736, current: 18672 },
    tolerance: { relative: 1e-3, reason: 'printed to four digits' },
  },
];
