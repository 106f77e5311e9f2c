import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { expansions, liquidDensities, productTemperatures } from './weighing-bounds.ts';
import { expansionDefinition } from './weighing-sources.ts';

/**
 * Density of a product at another temperature, by its cubic expansion.
 *
 * Method   rho_r = rho (1 + beta (T - T_r))
 * Symbols  rho   density      scalar  kg/m3 at T
 *          T     temperature  scalar  K
 *          T_r   reference    scalar  K
 *          beta  expansion    scalar  1/K, of the product, mean between both
 * Returns  kg/m3 at T_r
 * Assumes  an expansion that is constant between both; that of water is not: use its density
 * Cost     O(1)
 * Source   definition of cubic expansion with the volume at T_r as its base
 */
export const densityAtReference = (
  density: number,
  temperature: number,
  reference: number,
  expansion: number,
): number => density * (1 + expansion * (temperature - reference));

interface DensityAtReferenceInputs {
  readonly density: number;
  readonly temperature: number;
  readonly reference: number;
  readonly expansion: number;
}

export const densityAtReferenceSheet = defineSheet({
  id: 'contents/density-at-reference',
  version: 1,
  inputs: {
    density: weighedField('density', '\\rho', liquidDensities),
    temperature: numberField('temperature', 'T', productTemperatures),
    reference: numberField('temperature', 'T_r', { ...productTemperatures, assumed: 293.15 }),
    expansion: numberField('cubicExpansion', '\\beta', expansions),
  },
  outputs: {
    referenceDensity: weighedField('density', '\\rho_r'),
    ratio: numberField('ratio', 'V_r/V'),
  },
  formula: [
    '\\rho_r = \\rho \\left( 1 + \\beta (T - T_r) \\right), \\quad \\frac{V_r}{V} = \\frac{\\rho}{\\rho_r}',
  ],
  limits: [
    // over 15 K the expansion of watery products itself changes by half
    {
      code: 'EXPANSION_STEP_FAR',
      broken: ({ temperature, reference }) => Math.abs(temperature - reference) > 15,
    },
  ],
  sources: [expansionDefinition],
  compute: (i: DensityAtReferenceInputs) => {
    const referenceDensity = densityAtReference(i.density, i.temperature, i.reference, i.expansion);
    return { referenceDensity, ratio: i.density / referenceDensity };
  },
});
