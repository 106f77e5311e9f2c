import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesMade, ratesAboveZero } from './bounds.ts';
import { packagingLines } from './trial-sources.ts';

/**
 * How long a station may stop before its neighbour stands too.
 *
 * Method   t = C/R
 * Symbols  C  bottles  count   >= 0   that stand on the conveyor, or still find room on it
 *          R  rate     scalar  1/s    > 0, of the neighbour that runs on
 * Returns  time, s
 * Assumes  the conveyor brings the last bottle as fast as the first
 * Cost     O(1)
 * Source   definition
 */
export const accumulationTime = (bottles: number, rate: number): number => bottles / rate;

interface AccumulationInputs {
  readonly bottles: number;
  readonly rate: number;
}

export const accumulationTimeSheet = defineSheet({
  id: 'rate/accumulation-time',
  version: 1,
  inputs: {
    bottles: numberField('count', 'C', bottlesMade),
    rate: numberField('rate', 'R', ratesAboveZero),
  },
  outputs: { time: numberField('time', 't') },
  formula: ['t = \\frac{C}{R}'],
  limits: [{ code: 'ACCUMULATION_FULL', broken: () => true }],
  sources: [packagingLines],
  compute: ({ bottles, rate }: AccumulationInputs) => ({ time: accumulationTime(bottles, rate) }),
});
