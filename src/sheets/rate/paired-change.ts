import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { type MeanInterval, meanInterval } from './interval-of-runs.ts';
import { assumedConfidence, figures } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';

interface PairedInputs {
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly confidence: number;
}

/**
 * What a change is worth, from runs that met the same chances before and after it.
 *
 * Method   d_i = y_i - x_i;  dbar -+ t((1 + P)/2, m - 1) s_d/sqrt m
 * Symbols  before      x  [m]     any unit, m >= 2
 *          after       y  [m]     the same runs with the change
 *          confidence  P  scalar  two-sided
 * Returns  mean difference, its standard deviation, half width, ends
 * Assumes  pairs independent of each other
 * Cost     O(m)
 * Source   Student's distribution of the differences
 */
export const pairedChange = ({ before, after, confidence }: PairedInputs): MeanInterval =>
  meanInterval(
    after.map((y, i) => y - before[i]!),
    confidence,
  );

export const pairedChangeSheet = defineSheet<PairedInputs, MeanInterval>({
  id: 'rate/paired-change',
  version: 1,
  inputs: {
    before: listField('count', 'x_i', { ...figures, fewest: 2 }),
    after: listField('count', 'y_i', { ...figures, fewest: 2 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    mean: numberField('count', '\\bar d'),
    spread: numberField('count', 's_d'),
    halfWidth: numberField('count', 'h'),
    low: numberField('count', 'd_-'),
    high: numberField('count', 'd_+'),
  },
  formula: [
    'd_i = y_i - x_i, \\quad d_\\mp = \\bar d \\mp h, \\quad h = t_{(1+P)/2,\\, m-1} \\frac{s_d}{\\sqrt m}',
  ],
  limits: [{ code: 'CHANGE_NOT_SHOWN', broken: (_, { low, high }) => low <= 0 && high >= 0 }],
  sources: [statisticsTheory],
  check: ({ before, after }) => listLengths({ before, after }),
  compute: pairedChange,
});
