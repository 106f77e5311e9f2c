import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesAboveZero, ratesAboveZero } from './bounds.ts';
import { definition } from './sources.ts';

/**
 * Longest period in which a station or line still keeps an agreed rate.
 *
 * Method   T = n/R
 * Symbols  n  bottles  count   > 0   in one period
 *          R  rate     scalar  1/s   > 0
 * Returns  period, s
 * Assumes  no stop, nothing missing, nothing rejected
 * Cost     O(1)
 * Source   definition
 */
export const agreedPeriod = (rate: number, bottles: number): number => bottles / rate;

interface AgreedPeriodInputs {
  readonly rate: number;
  readonly bottles: number;
}

export const agreedPeriodSheet = defineSheet({
  id: 'rate/agreed-period',
  version: 1,
  inputs: {
    rate: numberField('rate', 'R', ratesAboveZero),
    bottles: numberField('count', 'n', bottlesAboveZero),
  },
  outputs: { period: numberField('time', 'T') },
  formula: ['T = \\frac{n}{R}'],
  limits: [{ code: 'AGREED_PERIOD_NO_STOP', broken: () => true }],
  sources: [definition],
  compute: ({ rate, bottles }: AgreedPeriodInputs) => ({ period: agreedPeriod(rate, bottles) }),
});
