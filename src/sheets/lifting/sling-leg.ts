import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { someMasses } from './bounds.ts';
import { liftingCaution } from './caution.ts';

export type LegsOn = '1' | '2' | '3' | '4';
export type LegsCounted = 'two of them' | 'three of them';
export type AngleFrom = 'horizontal' | 'vertical';

/** Legs that are counted to carry: of three or four on a rigid load only two, or three where lengths are known. */
export const legsCounted = (legs: number, counted: LegsCounted): number =>
  Math.min(legs, counted === 'two of them' ? 2 : 3);

/**
 * Pull in a leg of a sling.
 *
 * Method   T = m g/(n sin b),  b the angle to the horizontal
 * Symbols  m  mass   scalar  kg
 *          n  legs   count   that are counted to carry
 *          b  angle  scalar  rad to the horizontal, above 0
 * Returns  N
 * Assumes  legs of one length, mass under the hook, no jerk
 * Cost     O(1)
 * Source   statics
 */
export const slingTension = (mass: number, legs: number, angle: number): number =>
  (mass * standardGravity) / (legs * Math.sin(angle));

interface SlingLegInputs {
  readonly mass: number;
  readonly legs: LegsOn;
  readonly counted: LegsCounted;
  readonly angle: number;
  readonly angleFrom: AngleFrom;
  readonly legCapacity: number;
}

const toHorizontal = (angle: number, from: AngleFrom): number =>
  from === 'horizontal' ? angle : 0.5 * Math.PI - angle;

/** Flattest leg that is computed, to the horizontal: 15 degrees, where a leg carries nearly four times its share. */
const flattest = Math.PI / 12;

export const slingLegSheet = defineSheet({
  id: 'lifting/sling-leg',
  version: 1,
  inputs: {
    mass: numberField('mass', 'm', someMasses),
    legs: choiceField<LegsOn>('\\text{legs}', ['1', '2', '3', '4']),
    counted: choiceField<LegsCounted>('\\text{counted}', ['two of them', 'three of them'], 'two of them'),
    angle: numberField('angle', '\\beta', { least: 0, most: 0.5 * Math.PI }),
    angleFrom: choiceField<AngleFrom>('\\text{from}', ['horizontal', 'vertical']),
    legCapacity: numberField('mass', 'm_a', someMasses),
  },
  outputs: {
    tension: numberField('force', 'T'),
    tensionMass: numberField('mass', 'T / g'),
    factor: numberField('ratio', 'k'),
    legShare: numberField('ratio', 's'),
  },
  formula: [
    'T = \\frac{m g}{n \\sin \\beta_h}, \\quad k = \\frac{1}{\\sin \\beta_h}, \\quad s = \\frac{T}{m_a g}',
    '\\beta_h = \\beta \\text{ to the horizontal, or } 90^\\circ - \\beta \\text{ from the vertical}; \\quad n = \\min(\\text{legs},\\ 2 \\text{ or } 3)',
  ],
  limits: [
    liftingCaution,
    { code: 'SLING_OVER_CAPACITY', broken: (_, { legShare }) => legShare > 1 },
    // 30 degrees to the horizontal, 60 from the vertical
    { code: 'SLING_FLAT', broken: (_, { factor }) => factor > 2 + 1e-9 },
    { code: 'SLING_RIGID', broken: ({ legs }) => legs === '3' || legs === '4' },
    { code: 'SLING_ANGLE_WORDS', broken: () => true },
    { code: 'SLING_REDUCED', broken: () => true },
  ],
  sources: [
    { title: 'public sling chart', place: 'factors by angle to the horizontal', mark: 'read' },
    { title: 'statics', place: 'derived', mark: 'computed' },
    { title: 'rigging trade', place: 'legs counted on a rigid load', mark: 'memory' },
  ],
  check: ({ angle, angleFrom }) =>
    toHorizontal(angle, angleFrom) >= flattest - 1e-12
      ? []
      : [
          {
            code: 'SLING_TOO_FLAT',
            path: 'angle',
            given: angle,
            allowed: angleFrom === 'horizontal' ? '>= 15 deg' : '<= 75 deg',
          },
        ],
  compute: (i: SlingLegInputs) => {
    const angle = toHorizontal(i.angle, i.angleFrom);
    const tension = slingTension(i.mass, legsCounted(Number(i.legs), i.counted), angle);
    return {
      tension,
      tensionMass: tension / standardGravity,
      factor: 1 / Math.sin(angle),
      legShare: tension / (i.legCapacity * standardGravity),
    };
  },
});
