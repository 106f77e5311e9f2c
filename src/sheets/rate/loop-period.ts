import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { oneOrMore, times } from './bounds.ts';
import { maxPlus } from './sources.ts';

/**
 * Time a fill that one loop of waits allows at best.
 *
 * Method   T = sum(w_i)/(m b)
 * Symbols  w  steps   [n]    s   >= 0, one after the other round the loop
 *          m  blocks  count      blocks of the line after which the loop comes back to where it began
 *          b  fills   count      fills of the lanes in a block; 1 where a row of the washer is one fill
 * Returns  period, s a fill
 * Assumes  constant times; the line's own period is that of the longest of all its loops
 * Cost     O(n)
 * Source   max-plus algebra: mean weight of a circuit
 */
export const loopPeriod = (steps: readonly number[], blocks: number, fills: number): number =>
  steps.reduce((sum, step) => sum + step, 0) / (blocks * fills);

interface LoopPeriodInputs {
  readonly steps: readonly number[];
  readonly blocks: number;
  readonly fills: number;
}

export const loopPeriodSheet = defineSheet({
  id: 'rate/loop-period',
  version: 1,
  inputs: {
    steps: listField('time', 'w_i', times),
    blocks: numberField('count', 'm', oneOrMore),
    fills: numberField('count', 'b', oneOrMore),
  },
  outputs: { period: numberField('time', 'T') },
  formula: ['T = \\frac{\\sum_i w_i}{m\\, b}', 'T_{\\text{line}} = \\max_{\\text{loops}} T'],
  limits: [{ code: 'RATE_ONE_LOOP_OF_ALL', broken: () => true }],
  sources: [maxPlus],
  compute: (i: LoopPeriodInputs) => ({ period: loopPeriod(i.steps, i.blocks, i.fills) }),
});
