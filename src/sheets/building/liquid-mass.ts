import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { movingCaution } from './caution.ts';
import { arithmetic } from './sources.ts';

/** Water and thin product, kg/m3. */
export const usualDensity = 1000;

/**
 * Mass of the liquid that fills the baths and vessels of a section.
 *
 * Method   m = rho sum V_i
 * Symbols  V_i  volumes  [n]     m3
 *          rho  density  scalar  kg/m3
 * Returns  kg
 * Assumes  all of them full
 * Cost     O(n)
 * Source   definition of density
 */
export const liquidMass = (volumes: readonly number[], density: number): number =>
  density * volumes.reduce((sum, volume) => sum + volume, 0);

interface LiquidMassInputs {
  readonly volumes: readonly number[];
  readonly density: number;
}

export const liquidMassSheet = defineSheet({
  id: 'building/liquid-mass',
  version: 1,
  inputs: {
    volumes: listField('volume', 'V_i', { least: 0, most: 1e4 }),
    density: numberField('density', '\\rho', { least: 500, most: 2500, assumed: usualDensity }),
  },
  outputs: { mass: numberField('mass', 'm') },
  formula: ['m = \\rho \\sum_i V_i'],
  limits: [movingCaution],
  sources: [arithmetic],
  compute: ({ volumes, density }: LiquidMassInputs) => ({ mass: liquidMass(volumes, density) }),
});
