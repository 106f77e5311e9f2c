import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heatFlows } from './bounds.ts';
import { heatBalance } from './sources.ts';

/**
 * Heat flows of several places together; one that is negative counts for nothing.
 *
 * Method   P = sum max(0, P_i)
 * Symbols  P_i  heats  [n]  W
 * Returns  W
 * Assumes  a place that gets warm by itself helps no other
 * Cost     O(n)
 * Source   heat balance
 */
export const heatTogether = (heats: readonly number[]): number =>
  heats.reduce((sum, heat) => sum + Math.max(0, heat), 0);

export const heatTogetherSheet = defineSheet({
  id: 'heat/heat-together',
  version: 1,
  inputs: { heats: listField('heatFlow', 'P_i', { ...heatFlows, least: -heatFlows.most }) },
  outputs: { heat: numberField('heatFlow', 'P') },
  formula: ['P = \\sum_i \\max(0, P_i)'],
  limits: [],
  sources: [heatBalance],
  compute: (i: { readonly heats: readonly number[] }) => ({ heat: heatTogether(i.heats) }),
});
