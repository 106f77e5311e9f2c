import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesMade, rates, ratesAboveZero } from './bounds.ts';
import { packagingLines } from './trial-sources.ts';

/**
 * Time in which the faster station makes good what a stop has cost its buffer.
 *
 * Method   t = C/(R_f - R_s)
 * Symbols  C    bottles  count   >= 0   that the stop took out of the buffer, or put into it
 *          R_f  faster   scalar  1/s    > R_s
 *          R_s  slower   scalar  1/s    >= 0, usually the filler
 * Returns  time, s
 * Assumes  neither stops again meanwhile
 * Cost     O(1)
 * Source   definition
 */
export const recoveryTime = (bottles: number, faster: number, slower: number): number =>
  bottles / (faster - slower);

interface RecoveryInputs {
  readonly bottles: number;
  readonly faster: number;
  readonly slower: number;
}

export const recoveryTimeSheet = defineSheet({
  id: 'rate/recovery-time',
  version: 1,
  inputs: {
    bottles: numberField('count', 'C', bottlesMade),
    faster: numberField('rate', 'R_f', ratesAboveZero),
    slower: numberField('rate', 'R_s', rates),
  },
  outputs: { time: numberField('time', 't') },
  formula: ['t = \\frac{C}{R_f - R_s}'],
  limits: [],
  sources: [packagingLines],
  check: ({ faster, slower }) =>
    faster > slower
      ? []
      : [{ code: 'BUFFER_NEVER_RECOVERS', path: 'faster', given: faster, allowed: `> ${slower}` }],
  compute: (i: RecoveryInputs) => ({ time: recoveryTime(i.bottles, i.faster, i.slower) }),
});
