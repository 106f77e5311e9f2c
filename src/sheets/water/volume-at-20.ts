import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { temperatures, volumes } from './bounds.ts';
import { iapwsLiquid } from './sources.ts';
import { waterDensity } from './water-density.ts';

/** 20 degC, at which contents are declared. */
const reference = 293.15;

/**
 * Volume at 20 degC over the volume at the temperature of filling, of water.
 *
 * Method   V20/V = rho(T)/rho(20 degC)
 * Symbols  T  temperature  scalar  K
 * Returns  ratio
 * Assumes  water; a juice expands more
 * Cost     O(1)
 * Source   `waterDensity`
 */
export const volumeRatioAt20 = (T: number): number => waterDensity(T) / waterDensity(reference);

export const volumeAt20Sheet = defineSheet({
  id: 'water/volume-at-20',
  version: 1,
  inputs: {
    volume: numberField('volume', 'V', volumes),
    temperature: numberField('temperature', 'T', temperatures),
  },
  outputs: {
    volumeAt20: numberField('volume', 'V_{20}'),
    ratio: numberField('ratio', 'V_{20}/V'),
  },
  formula: ['V_{20} = V \\frac{\\rho(T)}{\\rho(293.15\\,\\mathrm{K})}'],
  limits: [],
  sources: [iapwsLiquid],
  compute: ({ volume, temperature }: { readonly volume: number; readonly temperature: number }) => {
    const ratio = volumeRatioAt20(temperature);
    return { volumeAt20: volume * ratio, ratio };
  },
});
