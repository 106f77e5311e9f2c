import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { lengths, someMasses } from './bounds.ts';
import { liftingCaution } from './caution.ts';
import { centreOfMass } from './two-point-weighing.ts';

interface CornerWeighingInputs {
  readonly firstLeft: number;
  readonly firstRight: number;
  readonly secondLeft: number;
  readonly secondRight: number;
  readonly base: number;
  readonly track: number;
}

/**
 * Share of the mass by which one diagonal of four supports carries more than the other: how far it rocks on them.
 *
 * Method   e = |m_1l + m_2r - m_1r - m_2l|/m
 * Symbols  m_1l, m_1r, m_2l, m_2r  corners  scalar  kg, first and second end, left and right
 * Returns  share, 0 where all four stand alike
 * Cost     O(1)
 * Source   four supports are one more than statics settles
 */
export const diagonalShare = (
  firstLeft: number,
  firstRight: number,
  secondLeft: number,
  secondRight: number,
): number =>
  Math.abs(firstLeft + secondRight - firstRight - secondLeft) /
  (firstLeft + firstRight + secondLeft + secondRight);

/** A tenth of the mass on the wrong diagonal: the floor or the scales were not level. Common practice. */
const rocking = 0.1;

export const cornerWeighingSheet = defineSheet({
  id: 'lifting/corner-weighing',
  version: 1,
  inputs: {
    firstLeft: numberField('mass', 'm_{1l}', someMasses),
    firstRight: numberField('mass', 'm_{1r}', someMasses),
    secondLeft: numberField('mass', 'm_{2l}', someMasses),
    secondRight: numberField('mass', 'm_{2r}', someMasses),
    base: numberField('length', 'L', lengths),
    track: numberField('length', 'B', lengths),
  },
  outputs: {
    along: numberField('length', 'x'),
    across: numberField('length', 'y'),
    mass: numberField('mass', 'm'),
    weight: numberField('force', 'W'),
    diagonal: numberField('ratio', 'e'),
  },
  formula: [
    'm = m_{1l} + m_{1r} + m_{2l} + m_{2r}, \\quad W = m g',
    'x = \\frac{m_{2l} + m_{2r}}{m} L, \\quad y = \\frac{m_{1r} + m_{2r}}{m} B, \\quad e = \\frac{|m_{1l} + m_{2r} - m_{1r} - m_{2l}|}{m}',
  ],
  limits: [
    liftingCaution,
    { code: 'LIFTING_DRAINED', broken: () => true },
    { code: 'WEIGHING_ROCKS', broken: (_, { diagonal }) => diagonal > rocking },
    { code: 'WEIGHING_HEIGHT', broken: () => true },
  ],
  sources: [{ title: 'balance of moments', place: 'derived', mark: 'computed' }],
  compute: (i: CornerWeighingInputs) => {
    const mass = i.firstLeft + i.firstRight + i.secondLeft + i.secondRight;
    return {
      along: centreOfMass(i.firstLeft + i.firstRight, i.secondLeft + i.secondRight, i.base),
      across: centreOfMass(i.firstLeft + i.secondLeft, i.firstRight + i.secondRight, i.track),
      mass,
      weight: mass * standardGravity,
      diagonal: diagonalShare(i.firstLeft, i.firstRight, i.secondLeft, i.secondRight),
    };
  },
});
