import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { heights as bounds } from './bounds.ts';
import { movingCaution } from './caution.ts';
import { plainGeometry } from './sources.ts';

/**
 * Lengths one behind, beside or above the other.
 *
 * Method   l = sum l_i
 * Symbols  l_i  lengths  [n]  m
 * Returns  m
 * Assumes  nothing overlaps
 * Cost     O(n)
 * Source   plane geometry
 */
export const lengthsTogether = (lengths: readonly number[]): number =>
  lengths.reduce((sum, one) => sum + one, 0);

export const lengthsTogetherSheet = defineSheet({
  id: 'building/lengths-together',
  version: 1,
  inputs: { lengths: listField('length', 'l_i', bounds) },
  outputs: { length: numberField('length', 'l') },
  formula: ['l = \\sum_i l_i'],
  limits: [movingCaution],
  sources: [plainGeometry],
  compute: (i: { readonly lengths: readonly number[] }) => ({ length: lengthsTogether(i.lengths) }),
});
