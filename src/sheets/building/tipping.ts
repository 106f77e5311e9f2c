import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { lengths, slopes, someMasses } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { statics } from './sources.ts';

/** Slope, rise over run, at which a body tips over its lower edge: d/h. */
export const tippingSlope = (edgeDistance: number, height: number): number => edgeDistance / height;

/**
 * Level force at a height that tips a standing body.
 *
 * Method   F = m g d/H
 * Symbols  m  mass          scalar  kg
 *          d  edgeDistance  scalar  m  level, from the centre of mass to the edge over which it tips
 *          H  pushHeight    scalar  m
 * Returns  N
 * Assumes  it does not slide; nobody shakes it
 * Cost     O(1)
 * Source   statics
 */
export const tippingForce = (mass: number, edgeDistance: number, pushHeight: number): number =>
  (mass * standardGravity * edgeDistance) / pushHeight;

interface TippingInputs {
  readonly mass: number;
  readonly edgeDistance: number;
  readonly height: number;
  readonly slope: number;
  readonly pushHeight: number;
}

export const tippingSheet = defineSheet({
  id: 'building/tipping',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    edgeDistance: numberField('length', 'd', lengths),
    height: numberField('length', 'h', lengths),
    slope: numberField('ratio', 's', slopes),
    pushHeight: numberField('length', 'H', lengths),
  },
  outputs: {
    tipSlope: numberField('ratio', 's_t'),
    tipAngle: numberField('angle', '\\alpha_t'),
    slopeShare: numberField('ratio', 'u'),
    pushForce: numberField('force', 'F'),
  },
  formula: [
    's_t = \\frac{d}{h}, \\quad \\alpha_t = \\arctan s_t, \\quad u = \\frac{s}{s_t}, \\quad F = \\frac{m g d}{H}',
  ],
  limits: [
    movingCaution,
    { code: 'TIPPING_FALLS', broken: (_, { slopeShare }) => slopeShare >= 1 },
    { code: 'TIPPING_NEAR', broken: (_, { slopeShare }) => slopeShare >= 0.5 && slopeShare < 1 },
    { code: 'TIPPING_DRAINED', broken: () => true },
  ],
  sources: [statics],
  compute: (i: TippingInputs) => {
    const tipSlope = tippingSlope(i.edgeDistance, i.height);
    return {
      tipSlope,
      tipAngle: Math.atan(tipSlope),
      slopeShare: i.slope / tipSlope,
      pushForce: tippingForce(i.mass, i.edgeDistance, i.pushHeight),
    };
  },
});
