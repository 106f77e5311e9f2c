import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { lengths, someMasses } from './bounds.ts';
import { liftingCaution } from './caution.ts';

/**
 * Place of the centre of mass between two supports that are weighed.
 *
 * Method   x = F_2 L/(F_1 + F_2)
 * Symbols  F_1  first     scalar  any unit, at the support that x is counted from
 *          F_2  second    scalar  the same unit
 *          L    distance  scalar  m
 * Returns  m from the first support
 * Assumes  level, no force sideways; weigh again turned by 90 degrees, and tilted for the height
 * Cost     O(1)
 * Source   balance of moments
 */
export const centreOfMass = (first: number, second: number, distance: number): number =>
  (second * distance) / (first + second);

interface TwoPointWeighingInputs {
  readonly first: number;
  readonly second: number;
  readonly distance: number;
}

export const twoPointWeighingSheet = defineSheet({
  id: 'lifting/two-point-weighing',
  version: 1,
  inputs: {
    first: numberField('mass', 'm_1', someMasses),
    second: numberField('mass', 'm_2', someMasses),
    distance: numberField('length', 'L', lengths),
  },
  outputs: {
    fromFirst: numberField('length', 'x'),
    mass: numberField('mass', 'm'),
    weight: numberField('force', 'W'),
    offCentre: numberField('ratio', 'e'),
  },
  formula: [
    'x = \\frac{m_2 L}{m_1 + m_2}, \\quad m = m_1 + m_2, \\quad W = m g, \\quad e = \\frac{x}{L} - \\frac{1}{2}',
  ],
  limits: [
    liftingCaution,
    { code: 'LIFTING_DRAINED', broken: () => true },
    { code: 'WEIGHING_OFF_CENTRE', broken: (_, { offCentre }) => Math.abs(offCentre) > 0.1 },
    { code: 'WEIGHING_OTHER_WAYS', broken: () => true },
  ],
  sources: [{ title: 'balance of moments', place: 'derived', mark: 'computed' }],
  compute: ({ first, second, distance }: TwoPointWeighingInputs) => {
    const fromFirst = centreOfMass(first, second, distance);
    const mass = first + second;
    return { fromFirst, mass, weight: mass * standardGravity, offCentre: fromFirst / distance - 0.5 };
  },
});
