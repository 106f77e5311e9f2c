import { weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { referenceWeightDensity, usualAirDensity } from './volume-by-weighing.ts';
import { airDensities, liquidDensities, weightDensities } from './weighing-bounds.ts';
import { buoyancy } from './weighing-sources.ts';

/**
 * Density by weight in air: what a litre of a liquid shows on the balance. Net weight over it is volume.
 *
 * Method   rho' = (rho - rho_a)/(1 - rho_a/rho_b)
 * Symbols  rho    density        scalar  kg/m3, true
 *          rho_a  airDensity     scalar  kg/m3
 *          rho_b  weightDensity  scalar  kg/m3
 * Returns  kg/m3 as weighed in air
 * Cost     O(1)
 * Source   balance of forces
 */
export const densityInAir = (density: number, airDensity: number, weightDensity: number): number =>
  (density - airDensity) / (1 - airDensity / weightDensity);

interface DensityInAirInputs {
  readonly density: number;
  readonly airDensity: number;
  readonly weightDensity: number;
}

export const densityInAirSheet = defineSheet({
  id: 'contents/density-in-air',
  version: 1,
  inputs: {
    density: weighedField('density', '\\rho', liquidDensities),
    airDensity: weighedField('density', '\\rho_a', { ...airDensities, assumed: usualAirDensity }),
    weightDensity: weighedField('density', '\\rho_b', {
      ...weightDensities,
      assumed: referenceWeightDensity,
    }),
  },
  outputs: { inAir: weighedField('density', "\\rho'") },
  formula: ["\\rho' = \\frac{\\rho - \\rho_a}{1 - \\rho_a/\\rho_b}"],
  limits: [],
  sources: [buoyancy],
  compute: (i: DensityInAirInputs) => ({ inAir: densityInAir(i.density, i.airDensity, i.weightDensity) }),
});
