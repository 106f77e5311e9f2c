import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { standardGravity } from '../standard-gravity.ts';
import { bearingPressures, contactLengths, footCounts, masses, someMasses } from './bounds.ts';
import { structuralCaution } from './caution.ts';
import { fitting, statics } from './sources.ts';

/**
 * Force on one foot, or wheel, of a machine.
 *
 * Method   F = m g/n u
 * Symbols  m  mass   scalar  kg  all of it: full tanks and wet product included
 *          n  feet   count       >= 1
 *          u  uneven ratio       n/(n - 1) where one of them hangs free; 4/3 of four
 * Returns  N
 * Assumes  the mass sits in the middle of the feet
 * Cost     O(1)
 * Source   statics
 */
export const footForce = (mass: number, feet: number, uneven: number): number =>
  ((mass * standardGravity) / feet) * uneven;

/** How many times more a foot carries when one of them hangs free: 4/3 of four; of three or fewer none can. */
export const oneFootFree = (feet: number): number => (feet > 3 ? feet / (feet - 1) : 1);

interface FootLoadInputs {
  readonly dryMass: number;
  readonly waterMass: number;
  readonly productMass: number;
  readonly feet: number;
  readonly footDiameter: number;
  readonly allowed: number;
}

export const footLoadSheet = defineSheet({
  id: 'building/foot-load',
  version: 1,
  inputs: {
    dryMass: numberField('mass', 'm_d', someMasses),
    waterMass: numberField('mass', 'm_w', { ...masses, assumed: 0 }),
    productMass: numberField('mass', 'm_p', { ...masses, assumed: 0 }),
    feet: numberField('count', 'n', footCounts),
    footDiameter: numberField('length', 'd', contactLengths),
    allowed: numberField('bearingPressure', 'p_a', { ...bearingPressures, assumed: 1e6 }),
  },
  outputs: {
    mass: numberField('mass', 'm'),
    footForce: numberField('force', 'F'),
    pressure: numberField('bearingPressure', 'p'),
    unevenForce: numberField('force', "F'"),
    unevenPressure: numberField('bearingPressure', "p'"),
    plateDiameter: numberField('length', 'd_p'),
  },
  formula: [
    'm = m_d + m_w + m_p, \\quad F = \\frac{m g}{n}, \\quad p = \\frac{4 F}{\\pi d^2}',
    "F' = F \\frac{n}{n - 1} \\ (n > 3), \\quad p' = \\frac{4 F'}{\\pi d^2}, \\quad d_p = \\sqrt{\\frac{4 F'}{\\pi p_a}}",
  ],
  limits: [
    structuralCaution,
    { code: 'UNEVEN_FLOOR', broken: ({ feet }) => feet > 3 },
    { code: 'FOOT_OVER_ALLOWED', broken: ({ allowed }, { unevenPressure }) => unevenPressure > allowed },
    { code: 'FOOT_DRY_ONLY', broken: ({ waterMass, productMass }) => waterMass + productMass === 0 },
    { code: 'FOOT_ALLOWED_LOCAL', broken: () => true },
  ],
  sources: [statics, fitting],
  check: ({ feet }) => (Number.isInteger(feet) ? [] : [{ code: 'FEET_WHOLE', path: 'feet', given: feet }]),
  compute: (i: FootLoadInputs) => {
    const mass = i.dryMass + i.waterMass + i.productMass;
    const area = 0.25 * Math.PI * i.footDiameter * i.footDiameter;
    const even = footForce(mass, i.feet, 1);
    const unevenForce = footForce(mass, i.feet, oneFootFree(i.feet));
    return {
      mass,
      footForce: even,
      pressure: even / area,
      unevenForce,
      unevenPressure: unevenForce / area,
      plateDiameter: Math.sqrt((4 * unevenForce) / (Math.PI * i.allowed)),
    };
  },
});
