import type { Problem } from '../../quantity/problem.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { fillVolumes } from './fill-bounds.ts';
import { shewhart } from './fill-sources.ts';
import { rangeConstants, type SubgroupSize, subgroupSizes } from './range-constants.ts';

interface MeanRangeInputs {
  readonly values: readonly number[];
  readonly size: SubgroupSize;
}

interface MeanRangeOutputs {
  readonly grandMean: number;
  readonly meanLow: number;
  readonly meanHigh: number;
  readonly meanRange: number;
  readonly rangeLow: number;
  readonly rangeHigh: number;
  readonly spread: number;
  readonly outside: number;
  readonly firstOutside: number;
}

const subgroupsOf = ({ values, size }: MeanRangeInputs): readonly (readonly number[])[] => {
  const n = Number(size);
  return Array.from({ length: Math.floor(values.length / n) }, (_, g) => values.slice(g * n, (g + 1) * n));
};

const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
const rangeOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const subgroupProblems = (i: MeanRangeInputs): readonly Problem[] => {
  const given = i.values.length;
  if (given % Number(i.size) !== 0 || given < 2 * Number(i.size)) {
    return [{ code: 'CHART_SUBGROUPS', path: 'values', given, allowed: i.size }];
  }
  return subgroupsOf(i).some((group) => rangeOf(group) > 0)
    ? []
    : [{ code: 'CHART_NO_RANGE', path: 'values' }];
};

/**
 * Control limits of means and ranges of subgroups.
 *
 * Method   xbar +- 3 R/(d2 sqrt n), R (1 +- 3 d3/d2), the lower one not below zero
 * Symbols  values  in order of time, subgroup after subgroup  m3
 *          size    n, values in a subgroup
 * Returns  both centre lines and limits, spread within subgroups, subgroups outside and the first of them
 * Assumes  normal values; subgroups made under like conditions, such as one cycle of lanes set alike
 * Cost     O(values)
 * Source   W. A. Shewhart's charts as printed in tables of A2, D3, D4
 */
const meanRangeChart = (i: MeanRangeInputs): MeanRangeOutputs => {
  const [d2, d3] = rangeConstants[i.size];
  const groups = subgroupsOf(i);
  const means = groups.map(meanOf);
  const ranges = groups.map(rangeOf);
  const grandMean = meanOf(means);
  const meanRange = meanOf(ranges);
  const spread = meanRange / d2;
  const reach = (3 * spread) / Math.sqrt(Number(i.size));
  const [meanLow, meanHigh] = [grandMean - reach, grandMean + reach];
  const rangeLow = Math.max(0, meanRange - 3 * d3 * spread);
  const rangeHigh = meanRange + 3 * d3 * spread;
  const out = groups.map(
    (_, g) => means[g]! < meanLow || means[g]! > meanHigh || ranges[g]! < rangeLow || ranges[g]! > rangeHigh,
  );
  return {
    grandMean,
    meanLow,
    meanHigh,
    meanRange,
    rangeLow,
    rangeHigh,
    spread,
    outside: out.filter(Boolean).length,
    firstOutside: out.indexOf(true) + 1,
  };
};

export const meanRangeChartSheet = defineSheet<MeanRangeInputs, MeanRangeOutputs>({
  id: 'contents/mean-range-chart',
  version: 1,
  inputs: {
    values: weighedList('volume', 'x_i', { ...fillVolumes, fewest: 4 }),
    size: choiceField<SubgroupSize>('n', subgroupSizes, '5'),
  },
  outputs: {
    grandMean: weighedField('volume', '\\bar{\\bar x}'),
    meanLow: weighedField('volume', '\\bar x_-'),
    meanHigh: weighedField('volume', '\\bar x_+'),
    meanRange: weighedField('volume', '\\bar R'),
    rangeLow: weighedField('volume', 'R_-'),
    rangeHigh: weighedField('volume', 'R_+'),
    spread: weighedField('volume', '\\sigma'),
    outside: numberField('count', 'n_o'),
    firstOutside: numberField('count', 'i_o'),
  },
  formula: [
    '\\bar x_\\pm = \\bar{\\bar x} \\pm A_2 \\bar R, \\quad R_- = D_3 \\bar R, \\quad R_+ = D_4 \\bar R, \\quad \\sigma = \\frac{\\bar R}{d_2}',
    'A_2 = \\frac{3}{d_2 \\sqrt n}, \\quad D_3 = \\max \\left( 0, 1 - \\frac{3 d_3}{d_2} \\right), \\quad D_4 = 1 + \\frac{3 d_3}{d_2}',
  ],
  limits: [
    { code: 'CHART_FEW', broken: ({ values, size }) => values.length < 20 * Number(size) },
    { code: 'CHART_OUTSIDE', broken: (_, { outside }) => outside > 0 },
  ],
  sources: [shewhart],
  check: subgroupProblems,
  compute: meanRangeChart,
});
