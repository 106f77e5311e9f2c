import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

const lift = {
  carDepth: 2.4,
  carWidth: 1.5,
  carHeight: 2.3,
  doorWidth: 1.3,
  doorHeight: 2.1,
  clearance: 0.05,
  capacity: 1000,
} as const;

export const liftFitCases: readonly SheetCase[] = [
  {
    name: '700 kg of 2.0 by 1.1 by 1.8 m on 60 kg of skates of 120 mm, one rider: 835 of 1000 kg',
    source: arithmetic,
    inputs: {
      ...lift,
      mass: 700,
      gearMass: 60,
      people: 1,
      length: 2,
      width: 1.1,
      height: 1.8,
      gearHeight: 0.12,
    },
    outputs: {
      load: 835,
      loadShare: 0.835,
      depthMargin: 0.3,
      widthMargin: 0.1,
      heightMargin: 0.13,
      answer: 'fits',
    },
    tolerance: { relative: 1e-6, reason: 'sums of stated figures' },
    notes: ['CAUTION_MOVING', 'CAUTION_STRUCTURE'],
  },
  {
    name: '950 kg with a truck of 120 kg in the same lift',
    source: arithmetic,
    inputs: { ...lift, mass: 950, gearMass: 120, people: 0, length: 2.35, width: 1.1, height: 1.8 },
    outputs: { load: 1070, loadShare: 1.07, depthMargin: -0.05, answer: 'too large and too heavy' },
    tolerance: { relative: 1e-6, reason: 'sums of stated figures' },
    notes: ['LIFT_NO'],
  },
];
