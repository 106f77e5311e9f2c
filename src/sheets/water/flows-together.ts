import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows as bounds } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Flow of several streams that run at the same time.
 *
 * Method   Q = sum Q_i
 * Symbols  Q_i  flows  [n]  m3/s
 * Returns  m3/s
 * Assumes  they all run at once: what runs in turn comes to less
 * Cost     O(n)
 * Source   balance of volume
 */
export const flowsTogether = (flows: readonly number[]): number => flows.reduce((sum, one) => sum + one, 0);

export const flowsTogetherSheet = defineSheet({
  id: 'water/flows-together',
  version: 1,
  inputs: { flows: listField('volumeFlow', 'Q_i', bounds) },
  outputs: { flow: numberField('volumeFlow', 'Q') },
  formula: ['Q = \\sum_i Q_i'],
  limits: [],
  sources: [arithmetic],
  compute: (i: { readonly flows: readonly number[] }) => ({ flow: flowsTogether(i.flows) }),
});
