import { numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { fillVolumes } from './fill-bounds.ts';
import { handbook } from './fill-sources.ts';

interface IndividualsInputs {
  readonly values: readonly number[];
}

interface IndividualsOutputs {
  readonly mean: number;
  readonly movingRange: number;
  readonly low: number;
  readonly high: number;
  readonly spread: number;
  readonly outside: number;
  readonly firstOutside: number;
}

/** Mean range of two normal values in standard deviations, with the digits that the charts' tables print. */
const rangeOfTwo = 1.128;

/**
 * Control limits of single values by their moving range.
 *
 * Method   xbar +- 3 MR/1.128, MR the mean difference of neighbours
 * Symbols  values  in order of time  m3
 * Returns  mean, moving range, limits, spread, values outside and the first of them
 * Assumes  normal values without a trend: a trend widens the limits less than it should show
 * Cost     O(values)
 * Source   NIST/SEMATECH e-Handbook 6.3.2.2
 */
const individualsChart = ({ values }: IndividualsInputs): IndividualsOutputs => {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const steps = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const movingRange = steps.reduce((a, b) => a + b, 0) / steps.length;
  const spread = movingRange / rangeOfTwo;
  const [low, high] = [mean - 3 * spread, mean + 3 * spread];
  const out = values.map((value) => value < low || value > high);
  return {
    mean,
    movingRange,
    low,
    high,
    spread,
    outside: out.filter(Boolean).length,
    firstOutside: out.indexOf(true) + 1,
  };
};

export const individualsChartSheet = defineSheet<IndividualsInputs, IndividualsOutputs>({
  id: 'contents/individuals-chart',
  version: 1,
  inputs: { values: weighedList('volume', 'x_i', { ...fillVolumes, fewest: 3 }) },
  outputs: {
    mean: weighedField('volume', '\\bar x'),
    movingRange: weighedField('volume', '\\overline{MR}'),
    low: weighedField('volume', 'x_-'),
    high: weighedField('volume', 'x_+'),
    spread: weighedField('volume', '\\sigma'),
    outside: numberField('count', 'n_o'),
    firstOutside: numberField('count', 'i_o'),
  },
  formula: [
    '\\overline{MR} = \\frac{1}{n-1} \\sum |x_{i+1} - x_i|, \\quad \\sigma = \\frac{\\overline{MR}}{1.128}, \\quad x_\\pm = \\bar x \\pm 3 \\sigma',
  ],
  limits: [
    { code: 'CHART_FEW_SINGLES', broken: ({ values }) => values.length < 20 },
    { code: 'CHART_OUTSIDE', broken: (_, { outside }) => outside > 0 },
  ],
  sources: [handbook('6.3.2.2')],
  check: ({ values }) =>
    values.some((value) => value !== values[0]) ? [] : [{ code: 'CHART_NO_RANGE', path: 'values' }],
  compute: individualsChart,
});
