import type { Problem } from '../../quantity/problem.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { disinfectionTextbook } from './sources.ts';

/** A straight line y = slope x + intercept with its R2. */
export interface FittedLine {
  readonly slope: number;
  readonly intercept: number;
  /** Share of the scatter of y that the line explains; 1 where y does not scatter at all. */
  readonly explained: number;
}

/**
 * Straight line of least squares through points.
 *
 * Method   slope = Sxy/Sxx;  intercept = my - slope mx;  R2 = Sxy^2/(Sxx Syy)
 * Symbols  x, y  [n]  at least two different x
 * Returns  slope, intercept, R2
 * Cost     O(n)
 * Source   Gauss
 */
export const fittedLine = (x: readonly number[], y: readonly number[]): FittedLine => {
  const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  let [xx, xy, yy] = [0, 0, 0];
  x.forEach((value, i) => {
    xx += (value - mx) ** 2;
    xy += (value - mx) * (y[i]! - my);
    yy += (y[i]! - my) ** 2;
  });
  const slope = xy / xx;
  return { slope, intercept: my - slope * mx, explained: yy === 0 ? 1 : Math.min(1, (slope * xy) / yy) };
};

interface RateInputs {
  readonly times: readonly number[];
  readonly counts: readonly number[];
  readonly residual: number;
}

const ascending = (values: readonly number[]): readonly Problem[] =>
  values.every((value, i) => i === 0 || value > values[i - 1]!)
    ? []
    : [{ code: 'TIMES_ASCEND', path: 'times' }];

export const chickWatsonRateSheet = defineSheet({
  id: 'hygiene/chick-watson-rate',
  version: 1,
  inputs: {
    times: listField('time', 't_i', { ...times, fewest: 2 }),
    counts: listField('count', 'N_i', { least: 1e-6, most: 1e15, fewest: 2 }),
    residual: numberField('soluteConcentration', 'C', { least: 1e-9, most: 250 }),
  },
  outputs: {
    rate: numberField('inactivationRate', 'k'),
    intercept: numberField('ratio', 'b'),
    explained: numberField('ratio', 'R^2'),
    survivors: listField('ratio', '\\ln ( N_i / N_1 )'),
  },
  formula: ['\\min_{k, b} \\sum_i \\left( \\ln \\frac{N_i}{N_1} + k C t_i - b \\right)^2'],
  limits: [
    authority,
    { code: 'CHICK_RATE_NOT_FALLING', broken: (_, { rate }) => rate <= 0 },
    { code: 'CHICK_NOT_STRAIGHT', broken: (_, { explained }) => explained < 0.9 },
    always('CT_NOT_FOR_RINSE'),
    chemicalCaution,
  ],
  sources: [disinfectionTextbook],
  check: ({ times: moments, counts }) => {
    const problems = listLengths({ times: moments, counts });
    return problems.length > 0 ? problems : ascending(moments);
  },
  compute: ({ times: moments, counts, residual }: RateInputs) => {
    const survivors = counts.map((count) => Math.log(count / counts[0]!));
    const cts = moments.map((time) => residual * time);
    const { slope, intercept, explained } = fittedLine(cts, survivors);
    return { rate: -slope, intercept, explained, survivors };
  },
});
