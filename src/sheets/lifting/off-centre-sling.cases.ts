import type { SheetCase } from '../sheet-case.ts';

const degree = Math.PI / 180;
const byHand = { title: 'statics', place: 'hand calculation', mark: 'computed' } as const;

export const offCentreSlingCases: readonly SheetCase[] = [
  {
    name: 'legs at 30 and 60 degrees stand square to each other: cos 30 and cos 60 of the weight',
    source: { ...byHand, place: 'components along two legs at a right angle' },
    inputs: { mass: 1000, firstAngle: 30 * degree, secondAngle: 60 * degree, legCapacity: 1000 },
    outputs: { firstTension: 9806.65 * 0.8660254, secondTension: 4903.325, legShare: 0.8660254 },
    tolerance: { relative: 1e-7, reason: 'eight digits' },
    notes: ['CAUTION_LIFTING', 'SLING_STEEPER_PULLS'],
  },
  {
    name: 'equal legs at 30 degrees from the vertical: 1.155 times half the weight',
    source: { title: 'public sling chart', place: 'factor at 60 degrees to the horizontal', mark: 'read' },
    inputs: { mass: 100, firstAngle: 30 * degree, secondAngle: 30 * degree, legCapacity: 100 },
    outputs: { firstTension: 490.3325 * 1.155, secondTension: 490.3325 * 1.155 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
];
