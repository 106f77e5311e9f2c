import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { meanInterval } from './interval-of-runs.ts';
import { assumedConfidence, figures } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface BatchInputs {
  readonly values: readonly number[];
  readonly warmUp: number;
  readonly batches: number;
  readonly confidence: number;
}

interface BatchOutputs {
  readonly means: readonly number[];
  readonly batchSize: number;
  readonly mean: number;
  readonly halfWidth: number;
  readonly low: number;
  readonly high: number;
  readonly correlation: number;
}

const batchSizeOf = ({ values, warmUp, batches }: BatchInputs): number =>
  Math.floor((values.length - warmUp) / batches);

/**
 * Mean of one long run with its interval, the run parted into batches.
 *
 * Method   without the warm-up, b batches of floor((n - w)/b) values, the latest; Student's interval of their means;
 *          correlation r = sum (y_j - ybar)(y_(j+1) - ybar)/sum (y_j - ybar)^2
 * Symbols  values      x  [n]     any unit, in order of time
 *          warmUp      w  count   values left out at the beginning
 *          batches     b  count   >= 2
 *          confidence  P  scalar  two-sided
 * Returns  means of the batches, size of a batch, mean, half width, ends, correlation of neighbouring batches
 * Assumes  batches so long that their means hardly depend on each other
 * Cost     O(n)
 * Source   method of batch means
 */
export const batchMeans = (i: BatchInputs): BatchOutputs => {
  const batchSize = batchSizeOf(i);
  const from = i.values.length - i.batches * batchSize;
  const means = Array.from({ length: i.batches }, (_, j) => {
    const batch = i.values.slice(from + j * batchSize, from + (j + 1) * batchSize);
    return univariate(batch).mean;
  });
  const { mean, halfWidth, low, high } = meanInterval(means, i.confidence);
  // batches that are all equal have nothing in which they could follow each other
  return { means, batchSize, mean, halfWidth, low, high, correlation: univariate(means).lag1 ?? 0 };
};

/** Above this neighbouring batches are no longer taken as independent; rule of thumb. */
const mostCorrelation = 0.2;
const fewBatches = 20;

export const batchMeansSheet = defineSheet<BatchInputs, BatchOutputs>({
  id: 'rate/batch-means',
  version: 1,
  inputs: {
    values: listField('count', 'x_i', { ...figures, fewest: 2 }),
    warmUp: numberField('count', 'w', { least: 0, most: 1e4, assumed: 0 }),
    batches: numberField('count', 'b', { least: 2, most: 1000 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    means: listField('count', 'y_j'),
    batchSize: numberField('count', 'k'),
    mean: numberField('count', '\\bar y'),
    halfWidth: numberField('count', 'h'),
    low: numberField('count', 'y_-'),
    high: numberField('count', 'y_+'),
    correlation: numberField('ratio', 'r_1'),
  },
  formula: [
    'k = \\left\\lfloor \\frac{n - w}{b} \\right\\rfloor, \\quad y_j = \\frac{1}{k} \\sum_{i \\in j} x_i',
    'y_\\mp = \\bar y \\mp h, \\quad h = t_{(1+P)/2,\\, b-1} \\frac{s_y}{\\sqrt b}, \\quad r_1 = \\frac{\\sum_j (y_j - \\bar y)(y_{j+1} - \\bar y)}{\\sum_j (y_j - \\bar y)^2}',
  ],
  limits: [
    {
      code: 'BATCHES_FOLLOW_EACH_OTHER',
      broken: (_, { correlation }) => correlation > mostCorrelation,
    },
    { code: 'BATCHES_FEW', broken: ({ batches }) => batches < fewBatches },
  ],
  sources: [statisticsTheory],
  check: (i) => [
    ...wholeProblems({ warmUp: i.warmUp, batches: i.batches }),
    ...(batchSizeOf(i) >= 1
      ? []
      : [
          {
            code: 'BATCHES_TOO_MANY',
            path: 'batches',
            given: i.batches,
            allowed: `<= ${Math.max(0, i.values.length - i.warmUp)}`,
          },
        ]),
  ],
  compute: batchMeans,
});
