import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { lifetimes, year } from './bounds.ts';
import { guardingCaution } from './caution.ts';
import { leastLifetime } from './classes.ts';
import { iso13849 } from './sources.ts';

/**
 * One mean time to a dangerous failure that stands for two unequal channels.
 *
 * Method   M = 2/3 (M1 + M2 - 1/(1/M1 + 1/M2))
 * Symbols  M1, M2  first, second  scalar  s  each capped before
 * Returns  s
 * Cost     O(1)
 * Source   ISO 13849-1:2006 annex D
 */
export const twoChannels = (first: number, second: number): number =>
  (2 / 3) * (first + second - 1 / (1 / first + 1 / second));

interface TwoChannelsInputs {
  readonly first: number;
  readonly second: number;
}

/** The longest that a channel counts in category 4; 100 years in all others. */
const mostCounted = 2500 * year;
const usualCap = 100 * year;

export const twoChannelsSheet = defineSheet({
  id: 'safety/two-channels',
  version: 1,
  inputs: {
    first: numberField('lifetime', 'M_1', { ...lifetimes, most: mostCounted }),
    second: numberField('lifetime', 'M_2', { ...lifetimes, most: mostCounted }),
  },
  outputs: { lifetime: numberField('lifetime', 'M') },
  formula: ['M = \\frac{2}{3} \\left( M_1 + M_2 - \\frac{1}{\\frac{1}{M_1} + \\frac{1}{M_2}} \\right)'],
  limits: [
    guardingCaution,
    {
      code: 'CHANNELS_UNCAPPED',
      broken: ({ first, second }) => Math.max(first, second) > usualCap * (1 + 1e-9),
    },
    {
      code: 'LIFETIME_UNDER_3',
      broken: ({ first, second }) => Math.min(first, second) < leastLifetime * (1 - 1e-9),
    },
  ],
  sources: [iso13849],
  compute: ({ first, second }: TwoChannelsInputs) => ({ lifetime: twoChannels(first, second) }),
});
