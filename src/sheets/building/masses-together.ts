import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { masses as bounds } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { arithmetic } from './sources.ts';

/**
 * Mass of several things that are moved as one.
 *
 * Method   m = sum m_i
 * Symbols  m_i  masses  [n]  kg
 * Returns  kg
 * Assumes  nothing else rides along
 * Cost     O(n)
 * Source   balance of mass
 */
export const massesTogether = (masses: readonly number[]): number =>
  masses.reduce((sum, one) => sum + one, 0);

export const massesTogetherSheet = defineSheet({
  id: 'building/masses-together',
  version: 1,
  inputs: { masses: listField('mass', 'm_i', bounds) },
  outputs: { mass: numberField('mass', 'm') },
  formula: ['m = \\sum_i m_i'],
  limits: [movingCaution],
  sources: [arithmetic],
  compute: (i: { readonly masses: readonly number[] }) => ({ mass: massesTogether(i.masses) }),
});
