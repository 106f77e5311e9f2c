import { studentQuantile } from '../../statistics/student.ts';
import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottlesAboveZero, periods } from './bounds.ts';
import { assumedConfidence } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';

interface CycleInputs {
  readonly cycles: readonly number[];
  readonly bottles: number;
  readonly confidence: number;
}

interface CycleBound {
  readonly mean: number;
  readonly spread: number;
  readonly upper: number;
  readonly rate: number;
  readonly rateBound: number;
}

/**
 * Mean of timed cycles and the rate that they show.
 *
 * Method   xbar + t(P, n - 1) s/sqrt n;  rate b/xbar, at least b over the bound
 * Symbols  x  cycles      [n]     s    > 0, n >= 2, one after the other
 *          b  bottles     count        > 0, in a cycle
 *          P  confidence  scalar       one-sided
 * Returns  mean, standard deviation and upper bound of the mean, s; rate and its lower bound, 1/s
 * Assumes  cycles independent of each other and not far from normal; no stop among them
 * Cost     O(n)
 * Source   Student's distribution; the times are averaged, for the mean of rates is not the rate
 */
export const meanCycleBound = ({ cycles, bottles, confidence }: CycleInputs): CycleBound => {
  const { mean, sd } = univariate(cycles);
  const spread = sd!;
  const upper = mean + (studentQuantile(confidence, cycles.length - 1) * spread) / Math.sqrt(cycles.length);
  return { mean, spread, upper, rate: bottles / mean, rateBound: bottles / upper };
};

/** A watch stops all cycles of a shift; these are enough to see the holds among them. */
const fewCycles = 30;

export const meanCycleBoundSheet = defineSheet<CycleInputs, CycleBound>({
  id: 'rate/mean-cycle-bound',
  version: 1,
  inputs: {
    cycles: listField('time', 'x_i', { ...periods, fewest: 2 }),
    bottles: numberField('count', 'b', bottlesAboveZero),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    mean: numberField('time', '\\bar x', { digits: 6 }),
    spread: numberField('time', 's'),
    upper: numberField('time', 'x_+', { digits: 6 }),
    rate: numberField('rate', 'R', { digits: 6 }),
    rateBound: numberField('rate', 'R_-', { digits: 6 }),
  },
  formula: [
    'x_+ = \\bar x + t_{P,\\, n-1} \\frac{s}{\\sqrt n}, \\quad R = \\frac{b}{\\bar x}, \\quad R_- = \\frac{b}{x_+}',
  ],
  limits: [
    { code: 'CYCLES_NO_STOP', broken: () => true },
    {
      code: 'CYCLES_FEW',
      broken: ({ cycles }) => cycles.length < fewCycles,
      parts: ({ cycles }) => ({ cycles: cycles.length }),
    },
  ],
  sources: [statisticsTheory],
  compute: meanCycleBound,
});
