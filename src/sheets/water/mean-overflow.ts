import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { volumes } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * What runs over the level of a bottle, on the mean of the lanes.
 *
 * Method   V_o = 1/n sum max(0, V_i - V_l)
 * Symbols  V_i  filled  [n]     m3  >= 0
 *          V_l  level   scalar  m3  volume at the fill level
 * Returns  volume a bottle, m3
 * Cost     O(n)
 * Source   definition
 */
export const meanOverflow = (filled: readonly number[], level: number): number =>
  filled.reduce((sum, volume) => sum + Math.max(0, volume - level), 0) / filled.length;

export const meanOverflowSheet = defineSheet({
  id: 'water/mean-overflow',
  version: 1,
  inputs: {
    filled: listField('volume', 'V_i', volumes),
    level: numberField('volume', 'V_l', volumes),
  },
  outputs: { overflow: numberField('volume', 'V_o') },
  formula: ['V_o = \\frac{1}{n} \\sum_i \\max(0,\\ V_i - V_l)'],
  limits: [
    { code: 'OVERFLOW_SHORT_LANE', broken: ({ filled, level }) => filled.some((volume) => volume < level) },
  ],
  sources: [derived],
  compute: (i: { readonly filled: readonly number[]; readonly level: number }) => ({
    overflow: meanOverflow(i.filled, i.level),
  }),
});
