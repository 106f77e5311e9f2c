import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { someMasses } from './bounds.ts';
import { liftingCaution } from './caution.ts';

/**
 * Pull in one of two unequal legs of a sling.
 *
 * Method   T_1 = m g sin t_2/sin(t_1 + t_2)
 * Symbols  m    mass   scalar  kg
 *          t_1  own    scalar  rad from the vertical
 *          t_2  other  scalar  rad from the vertical, t_1 + t_2 in (0, pi)
 * Returns  N
 * Assumes  the mass hangs under the hook, one leg at each side of it
 * Cost     O(1)
 * Source   statics, law of sines
 */
export const unequalTension = (mass: number, own: number, other: number): number =>
  (mass * standardGravity * Math.sin(other)) / Math.sin(own + other);

interface OffCentreSlingInputs {
  readonly mass: number;
  readonly firstAngle: number;
  readonly secondAngle: number;
  readonly legCapacity: number;
}

const legAngles = { least: 0, most: (75 * Math.PI) / 180 } as const;

export const offCentreSlingSheet = defineSheet({
  id: 'lifting/off-centre-sling',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    firstAngle: numberField('angle', '\\theta_1', legAngles),
    secondAngle: numberField('angle', '\\theta_2', legAngles),
    legCapacity: numberField('mass', 'm_a', someMasses),
  },
  outputs: {
    firstTension: numberField('force', 'T_1'),
    secondTension: numberField('force', 'T_2'),
    legShare: numberField('ratio', 's'),
  },
  formula: [
    'T_1 = \\frac{m g \\sin \\theta_2}{\\sin(\\theta_1 + \\theta_2)}, \\quad T_2 = \\frac{m g \\sin \\theta_1}{\\sin(\\theta_1 + \\theta_2)}, \\quad s = \\frac{\\max(T_1, T_2)}{m_a g}',
  ],
  limits: [
    liftingCaution,
    { code: 'SLING_OVER_CAPACITY', broken: (_, { legShare }) => legShare > 1 },
    {
      code: 'SLING_FLAT',
      broken: ({ firstAngle, secondAngle }) => Math.max(firstAngle, secondAngle) > Math.PI / 3 + 1e-9,
    },
    { code: 'SLING_STEEPER_PULLS', broken: () => true },
  ],
  sources: [{ title: 'statics, law of sines', place: 'derived', mark: 'computed' }],
  check: ({ firstAngle, secondAngle }) =>
    firstAngle + secondAngle > 0.01
      ? []
      : [
          {
            code: 'SLING_LEGS_PARALLEL',
            path: 'secondAngle',
            given: secondAngle,
            allowed: '> 0.6 deg in sum',
          },
        ],
  compute: (i: OffCentreSlingInputs) => {
    const firstTension = unequalTension(i.mass, i.firstAngle, i.secondAngle);
    const secondTension = unequalTension(i.mass, i.secondAngle, i.firstAngle);
    return {
      firstTension,
      secondTension,
      legShare: Math.max(firstTension, secondTension) / (i.legCapacity * standardGravity),
    };
  },
});
