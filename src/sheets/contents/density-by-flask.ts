import type { Problem } from '../../quantity/problem.ts';
import { weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { trueDensity } from './true-density.ts';
import { referenceWeightDensity, usualAirDensity } from './volume-by-weighing.ts';
import { airDensities, masses, someMasses, someVolumes, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

interface DensityByFlaskInputs {
  readonly full: number;
  readonly empty: number;
  readonly volume: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

const emptyUnderFull = ({ full, empty }: DensityByFlaskInputs): readonly Problem[] =>
  empty < full ? [] : [{ code: 'FLASK_EMPTY_OVER_FULL', path: 'empty', given: empty, allowed: `< ${full}` }];

/** Density of a liquid of which a flask of known volume was weighed, at the temperature of both. */
export const densityByFlaskSheet = defineSheet({
  id: 'contents/density-by-flask',
  version: 1,
  inputs: {
    full: weighedField('mass', 'm_f', someMasses),
    empty: weighedField('mass', 'm_e', masses),
    volume: weighedField('volume', 'V', someVolumes),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
  },
  outputs: { inAir: weighedField('density', "\\rho'"), density: weighedField('density', '\\rho') },
  formula: [
    "\\rho' = \\frac{m_f - m_e}{V}",
    "\\rho = \\rho_a + \\rho' \\left( 1 - \\frac{\\rho_a}{\\rho_b} \\right)",
  ],
  limits: [
    // lighter than alcohol, heavier than syrup: a slip of weighing or of the flask's volume
    { code: 'FLASK_ODD', broken: (_, { density }) => density < 780 || density > 1450 },
  ],
  sources: [buoyancy],
  check: emptyUnderFull,
  compute: (i: DensityByFlaskInputs) => {
    const inAir = (i.full - i.empty) / i.volume;
    return {
      inAir,
      density: trueDensity(inAir, i.airDensity, i.weightDensity),
    };
  },
});
