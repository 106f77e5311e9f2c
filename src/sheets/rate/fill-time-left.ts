import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesAboveZero, oneOrMore, ratesAboveZero, times } from './bounds.ts';
import { maxPlus } from './sources.ts';

/**
 * Time that an agreed rate leaves for the fill, once the other steps of its loop are done.
 *
 * Method   t = (m b n/R - sum(w_i))/f
 * Symbols  R  rate         scalar  1/s  > 0    bottles
 *          n  bottles      count        > 0    in a fill of all lanes
 *          w  otherSteps   [k]     s    >= 0   all steps round the loop but the fill itself
 *          m  blocks       count               blocks that the loop spans
 *          b  fills        count               fills of the lanes in a block
 *          f  fillsInLoop  count               times that the loop passes through a fill
 * Returns  time, s; negative where the other steps alone are too long
 * Assumes  constant times; the same solved for the fill as `loopPeriod`
 * Cost     O(k)
 * Source   max-plus algebra: mean weight of a circuit
 */
export const fillTimeLeft = (
  rate: number,
  bottles: number,
  otherSteps: readonly number[],
  blocks: number,
  fills: number,
  fillsInLoop = 1,
): number =>
  ((blocks * fills * bottles) / rate - otherSteps.reduce((sum, step) => sum + step, 0)) / fillsInLoop;

interface FillTimeLeftInputs {
  readonly rate: number;
  readonly bottles: number;
  readonly otherSteps: readonly number[];
  readonly blocks: number;
  readonly fills: number;
  readonly fillsInLoop: number;
}

export const fillTimeLeftSheet = defineSheet({
  id: 'rate/fill-time-left',
  version: 1,
  inputs: {
    rate: numberField('rate', 'R', ratesAboveZero),
    bottles: numberField('count', 'n', bottlesAboveZero),
    otherSteps: listField('time', 'w_i', { ...times, fewest: 0 }),
    blocks: numberField('count', 'm', oneOrMore),
    fills: numberField('count', 'b', oneOrMore),
    fillsInLoop: numberField('count', 'f', { ...oneOrMore, assumed: 1 }),
  },
  outputs: { left: numberField('time', 't') },
  formula: ['t = \\frac{1}{f} \\left( \\frac{m\\, b\\, n}{R} - \\sum_i w_i \\right)'],
  limits: [{ code: 'RATE_NO_TIME_LEFT', broken: (_, { left }) => left <= 0 }],
  sources: [maxPlus],
  compute: (i: FillTimeLeftInputs) => ({
    left: fillTimeLeft(i.rate, i.bottles, i.otherSteps, i.blocks, i.fills, i.fillsInLoop),
  }),
});
