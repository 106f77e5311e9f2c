import { normalQuantile } from '../../statistics/normal.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { spreads } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';
import { levelOutcome } from './level-aim.ts';

interface ShortfallOptimumInputs {
  readonly spread: number;
  readonly costRatio: number;
}

interface ShortfallOptimumOutputs {
  readonly deviations: number;
  readonly over: number;
  readonly overflow: number;
  readonly shortfall: number;
}

/**
 * Mean over the level that costs least where a volume short costs so many times a volume over.
 *
 * Method   Phi(z) = c_u/(c_u + c_o)
 * Symbols  spread     sigma    of delivered less held            m3
 *          costRatio  c_u/c_o  cost of a volume short over that of a volume over
 * Returns  z, mean over the level, mean overflow and shortfall
 * Cost     O(1)
 * Source   the newsboy's problem (memory)
 */
const shortfallOptimum = ({ spread, costRatio }: ShortfallOptimumInputs): ShortfallOptimumOutputs => {
  const deviations = -normalQuantile(1 / (1 + costRatio));
  const over = deviations * spread;
  const { overflow, shortfall } = levelOutcome(over, spread);
  return { deviations, over, overflow, shortfall };
};

export const shortfallOptimumSheet = defineSheet<ShortfallOptimumInputs, ShortfallOptimumOutputs>({
  id: 'contents/shortfall-optimum',
  version: 1,
  inputs: {
    spread: weighedField('volume', '\\sigma_D', spreads),
    costRatio: numberField('ratio', 'c_u/c_o', { least: 1e-6, most: 1e9 }),
  },
  outputs: {
    deviations: numberField('ratio', 'z'),
    over: weighedField('volume', '\\mu'),
    overflow: weighedField('volume', 'E_+'),
    shortfall: weighedField('volume', 'E_-'),
  },
  formula: ['\\Phi(z) = \\frac{c_u}{c_u + c_o}, \\quad \\mu = z \\sigma_D'],
  limits: [{ code: 'OPTIMUM_BOTTLE_LOST', broken: () => true }],
  sources: [presetTheory],
  compute: shortfallOptimum,
});
