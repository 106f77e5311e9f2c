import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesAboveZero, periods } from './bounds.ts';
import { definition } from './sources.ts';

/**
 * Rate of a station or line that gives the same number of bottles in every period.
 *
 * Method   R = n/T
 * Symbols  n  bottles  count   > 0   in one period
 *          T  period   scalar  s     > 0
 * Returns  rate, bottles a second
 * Assumes  no stop, nothing missing, nothing rejected: a ceiling
 * Cost     O(1)
 * Source   definition
 */
export const bottleRate = (bottles: number, period: number): number => bottles / period;

interface BottleRateInputs {
  readonly bottles: number;
  readonly period: number;
}

export const bottleRateSheet = defineSheet({
  id: 'rate/bottle-rate',
  version: 1,
  inputs: {
    bottles: numberField('count', 'n', bottlesAboveZero),
    period: numberField('time', 'T', periods),
  },
  outputs: { rate: numberField('rate', 'R') },
  formula: ['R = \\frac{n}{T}'],
  limits: [{ code: 'RATE_CEILING', broken: () => true }],
  sources: [definition],
  compute: ({ bottles, period }: BottleRateInputs) => ({ rate: bottleRate(bottles, period) }),
});
