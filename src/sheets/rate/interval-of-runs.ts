import { studentQuantile } from '../../statistics/student.ts';
import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { assumedConfidence, figures } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';

interface RunsInputs {
  readonly values: readonly number[];
  readonly confidence: number;
}

export interface MeanInterval {
  readonly mean: number;
  readonly spread: number;
  readonly halfWidth: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Mean of a figure over independent runs, with its interval.
 *
 * Method   xbar -+ t((1 + P)/2, m - 1) s/sqrt m
 * Symbols  values      x   [m]     any unit, m >= 2, one of each run
 *          confidence  P   scalar  two-sided
 * Returns  mean, standard deviation of a run, half width, ends
 * Assumes  runs independent of each other; their means not far from normal
 * Cost     O(m)
 * Source   Student's distribution
 */
export const meanInterval = (values: readonly number[], confidence: number): MeanInterval => {
  const { mean, sd } = univariate(values);
  const spread = sd!;
  const halfWidth =
    (studentQuantile(0.5 * (1 + confidence), values.length - 1) * spread) / Math.sqrt(values.length);
  return { mean, spread, halfWidth, low: mean - halfWidth, high: mean + halfWidth };
};

/** Runs under which an interval is more Student than data. */
const fewRuns = 10;

export const intervalOfRunsSheet = defineSheet<RunsInputs, MeanInterval>({
  id: 'rate/interval-of-runs',
  version: 1,
  inputs: {
    values: listField('count', 'x_i', { ...figures, fewest: 2 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    mean: numberField('count', '\\bar x'),
    spread: numberField('count', 's'),
    halfWidth: numberField('count', 'h'),
    low: numberField('count', 'x_-'),
    high: numberField('count', 'x_+'),
  },
  formula: [
    'x_\\mp = \\bar x \\mp h, \\quad h = t_{(1+P)/2,\\, m-1} \\frac{s}{\\sqrt m}',
    '\\bar x = \\frac{1}{m} \\sum_i x_i, \\quad s^2 = \\frac{1}{m-1} \\sum_i (x_i - \\bar x)^2',
  ],
  limits: [{ code: 'RUNS_FEW', broken: ({ values }) => values.length < fewRuns }],
  sources: [statisticsTheory],
  compute: ({ values, confidence }) => meanInterval(values, confidence),
});
