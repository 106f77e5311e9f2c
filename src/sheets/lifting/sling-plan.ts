import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { someMasses } from './bounds.ts';
import { liftingCaution } from './caution.ts';

export type SlingLegs = '2' | '4';

/** Length of a leg from the hook to a point that lies off the plumb line under it. */
export const legLength = (along: number, across: number, height: number): number =>
  Math.hypot(along, across, height);

/**
 * Pull in the one leg that is counted to carry an end of a load that hangs from one hook.
 *
 * Method   T_1 = m g d_2/(d_1 + d_2) l_1/h,  l_1 = (d_1^2 + w^2 + h^2)^0.5
 * Symbols  m    mass    scalar  kg
 *          d_1  own     scalar  m along, from below the hook to the points of this end
 *          d_2  other   scalar  m along, to those of the other end, d_1 + d_2 > 0
 *          w    across  scalar  m across, to the farther point
 *          h    height  scalar  m from the points up to the hook, > 0
 * Returns  N
 * Assumes  the hook stands over the centre of mass, points level, the load rigid: of four legs two across corners carry it
 * Cost     O(1)
 * Source   balance of moments about the other end, pull along the leg
 */
export const planTension = (
  mass: number,
  own: number,
  other: number,
  across: number,
  height: number,
): number => (mass * standardGravity * (other / (own + other)) * legLength(own, across, height)) / height;

interface SlingPlanInputs {
  readonly mass: number;
  readonly legs: SlingLegs;
  readonly centreAlong: number;
  readonly centreAcross: number;
  readonly firstAlong: number;
  readonly apartAlong: number;
  readonly firstAcross: number;
  readonly apartAcross: number;
  readonly height: number;
  readonly legCapacity: number;
}

/** Places are counted from a corner of the load; points may stand out over it. */
const places = { least: -10, most: 100 } as const;
const apart = { least: 0, most: 100 } as const;

/** Flattest leg that is computed, to the horizontal: 15 degrees, where a leg carries nearly four times its share. */
const flattest = Math.PI / 12;

/** Level distances from below the hook: to the points of both ends along, and to the farther point across. */
const reachOf = (i: SlingPlanInputs) => ({
  first: i.centreAlong - i.firstAlong,
  second: i.firstAlong + i.apartAlong - i.centreAlong,
  across: Math.max(
    Math.abs(i.centreAcross - i.firstAcross),
    Math.abs(i.firstAcross + i.apartAcross - i.centreAcross),
  ),
});

const flatter = (i: SlingPlanInputs): number => {
  const { first, second, across } = reachOf(i);
  return Math.asin(i.height / legLength(Math.max(first, second), across, i.height));
};

export const slingPlanSheet = defineSheet({
  id: 'lifting/sling-plan',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    legs: choiceField<SlingLegs>('\\text{legs}', ['2', '4']),
    centreAlong: numberField('length', 'x_c', places),
    centreAcross: numberField('length', 'y_c', places),
    firstAlong: numberField('length', 'x_1', places),
    apartAlong: numberField('length', 'a', apart),
    firstAcross: numberField('length', 'y_1', places),
    apartAcross: numberField('length', 'b', apart),
    height: numberField('length', 'h', { least: 0.05, most: 100 }),
    legCapacity: numberField('mass', 'm_a', someMasses),
  },
  outputs: {
    firstTension: numberField('force', 'T_1'),
    secondTension: numberField('force', 'T_2'),
    tensionMass: numberField('mass', 'T / g'),
    firstLength: numberField('length', 'l_1'),
    secondLength: numberField('length', 'l_2'),
    angle: numberField('angle', '\\beta_h'),
    legShare: numberField('ratio', 's'),
  },
  formula: [
    'd_1 = x_c - x_1, \\quad d_2 = x_1 + a - x_c, \\quad w = \\max(|y_c - y_1|, |y_1 + b - y_c|)',
    'l_i = \\sqrt{d_i^2 + w^2 + h^2}, \\quad \\beta_h = \\min_i \\arcsin \\frac{h}{l_i}',
    'T_1 = m g \\frac{d_2}{d_1 + d_2} \\frac{l_1}{h}, \\quad T_2 = m g \\frac{d_1}{d_1 + d_2} \\frac{l_2}{h}, \\quad s = \\frac{\\max(T_1, T_2)}{m_a g}',
  ],
  limits: [
    liftingCaution,
    { code: 'SLING_OVER_CAPACITY', broken: (_, { legShare }) => legShare > 1 },
    // 30 degrees to the horizontal, 60 from the vertical
    { code: 'SLING_FLAT', broken: (_, { angle }) => angle < Math.PI / 6 - 1e-9 },
    { code: 'SLING_CORNERS', broken: ({ legs }) => legs === '4' },
    { code: 'SLING_STEEPER_PULLS', broken: () => true },
    { code: 'SLING_REDUCED', broken: () => true },
  ],
  sources: [
    { title: 'statics, balance of moments', place: 'derived', mark: 'computed' },
    { title: 'rigging trade', place: 'legs counted on a rigid load', mark: 'memory' },
  ],
  check: (i) => {
    const { first, second } = reachOf(i);
    return [
      ...(i.apartAlong > 0.01
        ? []
        : [{ code: 'SLING_POINTS_TOGETHER', path: 'apartAlong', given: i.apartAlong, allowed: '> 10 mm' }]),
      ...(first >= 0 && second >= 0
        ? []
        : [
            {
              code: 'SLING_CENTRE_OUTSIDE',
              path: 'centreAlong',
              given: i.centreAlong,
              allowed: `${i.firstAlong} … ${i.firstAlong + i.apartAlong} m`,
            },
          ]),
      ...(flatter(i) >= flattest - 1e-12
        ? []
        : [{ code: 'SLING_TOO_FLAT', path: 'height', given: i.height, allowed: '>= 15 deg' }]),
    ];
  },
  compute: (i: SlingPlanInputs) => {
    const { mass, height, legCapacity } = i;
    const { first, second, across } = reachOf(i);
    const firstTension = planTension(mass, first, second, across, height);
    const secondTension = planTension(mass, second, first, across, height);
    const harder = Math.max(firstTension, secondTension);
    return {
      firstTension,
      secondTension,
      tensionMass: harder / standardGravity,
      firstLength: legLength(first, across, height),
      secondLength: legLength(second, across, height),
      angle: flatter(i),
      legShare: harder / (legCapacity * standardGravity),
    };
  },
});
