import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows as bounds } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Water that several open baths give to the air together.
 *
 * Method   m = sum m_i
 * Symbols  m_i  flows  [n]  kg/s
 * Returns  kg/s
 * Assumes  the air of the room is not yet so damp that one holds the other back
 * Cost     O(n)
 * Source   balance of mass
 */
export const vapourTogether = (flows: readonly number[]): number => flows.reduce((sum, one) => sum + one, 0);

export const vapourTogetherSheet = defineSheet({
  id: 'heat/vapour-together',
  version: 1,
  inputs: { flows: listField('massFlow', '\\dot m_i', bounds) },
  outputs: { flow: numberField('massFlow', '\\dot m') },
  formula: ['\\dot m = \\sum_i \\dot m_i'],
  limits: [],
  sources: [arithmetic],
  compute: (i: { readonly flows: readonly number[] }) => ({ flow: vapourTogether(i.flows) }),
});
