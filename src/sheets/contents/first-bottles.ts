import { studentQuantile } from '../../statistics/student.ts';
import { univariate } from '../../statistics/univariate.ts';
import { numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRuns, chances } from './fill-bounds.ts';
import { meanTheory } from './fill-sources.ts';

interface FirstBottlesInputs {
  readonly misses: readonly number[];
  readonly confidence: number;
}

interface FirstBottlesOutputs {
  readonly mean: number;
  readonly lowest: number;
  readonly highest: number;
  readonly spread: number;
  readonly halfWidth: number;
}

/**
 * By how much the first bottles after a stop hold another volume than those of a running line.
 *
 * Method   mean of the misses; s/sqrt(n) times Student's quantile on either side of it
 * Symbols  misses      d_i  m3, contents less what the running lane gives at that count
 *          confidence  P    two-sided
 * Returns  mean, the two ends, spread, and the half width of the mean: nought and unknown from a single bottle
 * Assumes  stops that are alike; what gathers in an hour is not what gathers over a night
 * Cost     O(n)
 * Source   reference, contents, F15: mean of n readings
 */
export const firstBottles = ({ misses, confidence }: FirstBottlesInputs): FirstBottlesOutputs => {
  const { mean, sd = 0 } = univariate(misses);
  const n = misses.length;
  return {
    mean,
    lowest: Math.min(...misses),
    highest: Math.max(...misses),
    spread: sd,
    halfWidth: n > 1 ? (studentQuantile(0.5 * (1 + confidence), n - 1) * sd) / Math.sqrt(n) : 0,
  };
};

export const firstBottlesSheet = defineSheet<FirstBottlesInputs, FirstBottlesOutputs>({
  id: 'contents/first-bottles',
  version: 1,
  inputs: {
    misses: weighedList('volume', 'd_i', afterRuns),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    mean: weighedField('volume', '\\bar d'),
    lowest: weighedField('volume', 'd_{\\min}'),
    highest: weighedField('volume', 'd_{\\max}'),
    spread: weighedField('volume', 's'),
    halfWidth: weighedField('volume', 'h'),
  },
  formula: ['h = t_{(1+P)/2,\\,n-1} \\frac{s}{\\sqrt n}'],
  limits: [{ code: 'FIRST_BOTTLES_FEW', broken: ({ misses }) => misses.length < 5 }],
  sources: [meanTheory],
  compute: firstBottles,
});
