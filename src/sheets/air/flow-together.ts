import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Free air that several users draw through one pipe.
 *
 * Method   q = sum q_i
 * Symbols  q_i  flows  [n]  m3/s  normal air
 * Returns  m3/s normal air
 * Assumes  they all draw at the same moment
 * Cost     O(n)
 * Source   balance of mass: free air is a mass flow
 */
export const flowTogether = (flows: readonly number[]): number => flows.reduce((sum, flow) => sum + flow, 0);

export const flowTogetherSheet = defineSheet({
  id: 'air/flow-together',
  version: 1,
  inputs: { flows: listField('normalAirFlow', 'q_i', normalFlows) },
  outputs: { flow: numberField('normalAirFlow', 'q') },
  formula: ['q = \\sum_i q_i'],
  limits: [
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [derived],
  compute: ({ flows }: { readonly flows: readonly number[] }) => ({ flow: flowTogether(flows) }),
});
