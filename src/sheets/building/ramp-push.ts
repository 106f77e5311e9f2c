import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { slopes, someMasses } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { statics } from './sources.ts';

/**
 * Force along a ramp that keeps a load rolling.
 *
 * Method   F = m g (s + sign f)/sqrt(1 + s^2)
 * Symbols  m     mass       scalar  kg
 *          s     slope      ratio   rise over run
 *          f     rolling    ratio   rolling resistance over weight
 *          sign  1 up the ramp; -1 held back on the way down
 * Returns  N; below 0 on the way down where the load stands by itself
 * Cost     O(1)
 * Source   statics
 */
export const rampForce = (mass: number, slope: number, rolling: number, sign: 1 | -1): number =>
  (mass * standardGravity * (slope + sign * rolling)) / Math.sqrt(1 + slope * slope);

interface RampPushInputs {
  readonly mass: number;
  readonly slope: number;
  readonly rolling: number;
}

export const rampPushSheet = defineSheet({
  id: 'building/ramp-push',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    slope: numberField('ratio', 's', slopes),
    // hard wheels on a smooth floor 0.01 to 0.02, soft wheels or a rough floor 0.03 to 0.05: common practice
    rolling: numberField('ratio', 'f', { least: 0, most: 0.5, assumed: 0.02 }),
  },
  outputs: {
    upForce: numberField('force', 'F_+'),
    holdForce: numberField('force', 'F_-'),
    levelForce: numberField('force', 'F_0'),
    angle: numberField('angle', '\\alpha'),
  },
  formula: [
    'F_\\pm = \\frac{m g (s \\pm f)}{\\sqrt{1 + s^2}}, \\quad F_0 = m g f, \\quad \\alpha = \\arctan s',
  ],
  limits: [
    movingCaution,
    { code: 'RAMP_RUNS_AWAY', broken: (_, { holdForce }) => holdForce > 0 },
    { code: 'RAMP_BY_HAND', broken: (_, { upForce }) => upForce > 400 },
    { code: 'RAMP_STARTING', broken: () => true },
  ],
  sources: [statics],
  compute: ({ mass, slope, rolling }: RampPushInputs) => ({
    upForce: rampForce(mass, slope, rolling, 1),
    holdForce: rampForce(mass, slope, rolling, -1),
    levelForce: rampForce(mass, 0, rolling, 1),
    angle: Math.atan(slope),
  }),
});
