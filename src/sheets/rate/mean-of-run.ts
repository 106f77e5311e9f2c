import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesMade, periods } from './bounds.ts';
import { definition } from './sources.ts';

/** Bottles below which one more or less moves the mean by over a percent. */
const fewBottles = 100;

/**
 * Mean rate of a run, with every stop that fell in it.
 *
 * Method   R = n/t
 * Symbols  n  bottles   count   >= 0   that came out within the run
 *          t  duration  scalar  s      > 0
 * Returns  rate, bottles a second
 * Assumes  the run begins and ends at the same point of a cycle; otherwise one set of bottles is uncertain
 * Cost     O(1)
 * Source   definition
 */
export const meanOfRun = (bottles: number, duration: number): number => bottles / duration;

interface MeanOfRunInputs {
  readonly bottles: number;
  readonly duration: number;
}

export const meanOfRunSheet = defineSheet({
  id: 'rate/mean-of-run',
  version: 1,
  inputs: {
    bottles: numberField('count', 'n', bottlesMade),
    duration: numberField('time', 't', periods),
  },
  outputs: { rate: numberField('rate', '\\bar{R}') },
  formula: ['\\bar{R} = \\frac{n}{t}'],
  limits: [
    {
      code: 'RUN_FEW_BOTTLES',
      broken: ({ bottles }) => bottles < fewBottles,
      parts: ({ bottles }) => ({ bottles }),
    },
  ],
  sources: [definition],
  compute: ({ bottles, duration }: MeanOfRunInputs) => ({ rate: meanOfRun(bottles, duration) }),
});
