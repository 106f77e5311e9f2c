import { weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { liquidDensities, someVolumes } from './weighing-bounds.ts';
import { expansionDefinition } from './weighing-sources.ts';

/**
 * Volume of a product at the temperature at which its contents are judged.
 *
 * Method   V_r = V rho/rho_r
 * Symbols  V      volume            scalar  m3 at the temperature of filling
 *          rho    density           scalar  kg/m3 there
 *          rho_r  referenceDensity  scalar  kg/m3 at the reference temperature
 * Returns  m3
 * Cost     O(1)
 * Source   the mass stays
 */
export const productAtReference = (volume: number, density: number, referenceDensity: number): number =>
  (volume * density) / referenceDensity;

interface ProductInputs {
  readonly volume: number;
  readonly density: number;
  readonly referenceDensity: number;
}

export const productAtReferenceSheet = defineSheet({
  id: 'contents/product-at-reference',
  version: 1,
  inputs: {
    volume: weighedField('volume', 'V', someVolumes),
    density: weighedField('density', '\\rho', liquidDensities),
    referenceDensity: weighedField('density', '\\rho_r', liquidDensities),
  },
  outputs: { atReference: weighedField('volume', 'V_r') },
  formula: ['V_r = V\\, \\frac{\\rho}{\\rho_r}'],
  limits: [
    // 5 % is water from 20 to 100 degC
    {
      code: 'REFERENCE_DENSITY_FAR',
      broken: ({ density, referenceDensity }) => Math.abs(density / referenceDensity - 1) > 0.05,
    },
  ],
  sources: [expansionDefinition],
  compute: (i: ProductInputs) => ({
    atReference: productAtReference(i.volume, i.density, i.referenceDensity),
  }),
});
