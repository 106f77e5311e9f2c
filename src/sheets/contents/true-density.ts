import { weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { referenceWeightDensity, usualAirDensity } from './volume-by-weighing.ts';
import { airDensities, liquidDensities, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

/**
 * True density of a liquid of which the density by weight in air is known.
 *
 * Method   rho = rho_a + rho' (1 - rho_a/rho_b)
 * Symbols  rho'   inAir          scalar  kg/m3
 *          rho_a  airDensity     scalar  kg/m3
 *          rho_b  weightDensity  scalar  kg/m3
 * Returns  kg/m3
 * Cost     O(1)
 * Source   balance of forces
 */
export const trueDensity = (inAir: number, airDensity: number, weightDensity: number): number =>
  airDensity + inAir * (1 - airDensity / weightDensity);

interface TrueDensityInputs {
  readonly inAir: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

export const trueDensitySheet = defineSheet({
  id: 'contents/true-density',
  version: 1,
  inputs: {
    inAir: weighedField('density', "\\rho'", liquidDensities),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
  },
  outputs: { density: weighedField('density', '\\rho') },
  formula: ["\\rho = \\rho_a + \\rho' \\left( 1 - \\frac{\\rho_a}{\\rho_b} \\right)"],
  limits: [],
  sources: [buoyancy],
  compute: (i: TrueDensityInputs) => ({ density: trueDensity(i.inAir, i.airDensity, i.weightDensity) }),
});
