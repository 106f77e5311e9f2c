import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const tippingCases: readonly SheetCase[] = [
  {
    name: '600 kg, 0.4 m from the edge, centre at 1.2 m: tips at 18.43 degrees, or by 1307 N at 1.8 m',
    source: arithmetic,
    inputs: { mass: 600, edgeDistance: 0.4, height: 1.2, slope: 0.1, pushHeight: 1.8 },
    outputs: { tipSlope: 1 / 3, tipAngle: 0.3217506, slopeShare: 0.3, pushForce: 1307.553 },
    tolerance: { relative: 1e-6, reason: 'seven digits' },
    notes: ['CAUTION_MOVING', 'TIPPING_DRAINED'],
  },
  {
    name: 'centre as high as it is far from the edge: 45 degrees',
    source: arithmetic,
    inputs: { mass: 1, edgeDistance: 0.5, height: 0.5, slope: 1, pushHeight: 0.5 },
    outputs: { tipAngle: Math.PI / 4, slopeShare: 1, pushForce: 9.80665 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['TIPPING_FALLS'],
  },
];
