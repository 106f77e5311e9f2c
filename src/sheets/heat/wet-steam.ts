import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows } from './bounds.ts';
import { always } from './caution.ts';
import { heatBalance } from './sources.ts';

/**
 * Wet steam that gives as much heat as a flow of dry steam.
 *
 * Method   m = m_d/x
 * Symbols  m_d  dry      scalar  kg/s
 *          x    dryness  scalar  share of the mass that is vapour
 * Returns  kg/s
 * Assumes  the condensate leaves boiling, so that the water in the steam gives nothing
 * Cost     O(1)
 * Source   heat balance
 */
export const wetSteam = (dry: number, dryness: number): number => dry / dryness;

interface WetSteamInputs {
  readonly dry: number;
  readonly dryness: number;
}

export const wetSteamSheet = defineSheet({
  id: 'heat/wet-steam',
  version: 1,
  inputs: {
    dry: numberField('massFlow', '\\dot m_d', flows),
    dryness: numberField('ratio', 'x', { least: 0.5, most: 1 }),
  },
  outputs: { steam: numberField('massFlow', '\\dot m') },
  formula: ['\\dot m = \\frac{\\dot m_d}{x}'],
  limits: [always('CAUTION_STEAM')],
  sources: [heatBalance],
  compute: ({ dry, dryness }: WetSteamInputs) => ({ steam: wetSteam(dry, dryness) }),
});
