import { normalCdf, normalDensity } from '../../statistics/normal.ts';
import { brentRoot } from '../brent-root.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { someFillVolumes, spreads } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';
import { levelOutcome } from './level-aim.ts';

interface OverflowOptimumInputs {
  readonly spread: number;
  readonly bottleWorth: number;
}

interface OverflowOptimumOutputs {
  readonly deviations: number;
  readonly over: number;
  readonly chance: number;
  readonly overflow: number;
  readonly cost: number;
}

/**
 * Mean over the level that costs least where a bottle that misses it is lost as a whole.
 *
 * Method   least of E[D+] + w (1 - Phi(z)) over z: Phi(z) sigma = w phi(z)
 * Symbols  spread       sigma  of delivered less held                           m3
 *          bottleWorth  w      product that costs as much as one missed bottle  m3
 * Returns  z, mean over the level, chance, overflow and cost a bottle in product
 * Assumes  what runs over is lost; cost in proportion
 * Cost     O(1)
 * Source   derived
 */
const overflowOptimum = ({ spread, bottleWorth }: OverflowOptimumInputs): OverflowOptimumOutputs => {
  const worth = bottleWorth / spread;
  // the chance less what a miss is worth rises all the way from -38, where no chance is left, to 38
  const deviations = brentRoot((z) => normalCdf(z) - worth * normalDensity(z), -38, 38);
  const over = deviations * spread;
  const { chance, overflow } = levelOutcome(over, spread);
  return { deviations, over, chance, overflow, cost: overflow + bottleWorth * normalCdf(-deviations) };
};

export const overflowOptimumSheet = defineSheet<OverflowOptimumInputs, OverflowOptimumOutputs>({
  id: 'contents/overflow-optimum',
  version: 1,
  inputs: {
    spread: weighedField('volume', '\\sigma_D', spreads),
    bottleWorth: weighedField('volume', 'w', someFillVolumes),
  },
  outputs: {
    deviations: numberField('ratio', 'z'),
    over: weighedField('volume', '\\mu'),
    chance: numberField('ratio', 'P'),
    overflow: weighedField('volume', 'E_+'),
    cost: weighedField('volume', 'K'),
  },
  formula: [
    'K = \\mu \\Phi(z) + \\sigma_D \\varphi(z) + w\\, \\Phi(-z) \\to \\min: \\quad \\Phi(z) = \\frac{w}{\\sigma_D} \\varphi(z)',
    '\\mu = z \\sigma_D, \\quad P = \\Phi(z)',
  ],
  limits: [{ code: 'OPTIMUM_BELOW_HALF', broken: (_, { chance }) => chance < 0.5 }],
  sources: [presetTheory],
  compute: overflowOptimum,
});
