import { studentQuantile } from '../../statistics/student.ts';
import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { fillVolumes, significances } from './fill-bounds.ts';
import { handbook } from './fill-sources.ts';

export const outlierSides = ['one', 'two'] as const;
export type OutlierSides = (typeof outlierSides)[number];
export const outlierVerdicts = ['outlier', 'none'] as const;
export type OutlierVerdict = (typeof outlierVerdicts)[number];

interface OutlierInputs {
  readonly values: readonly number[];
  readonly sides: OutlierSides;
  readonly significance: number;
}

interface OutlierOutputs {
  readonly place: number;
  readonly value: number;
  readonly statistic: number;
  readonly critical: number;
  readonly verdict: OutlierVerdict;
}

/**
 * Does the value that lies farthest from the mean belong to the others?
 *
 * Method   Grubbs: G = max|x - xbar|/s against (n-1)/sqrt n sqrt(t^2/(n-2+t^2)), t above alpha/n or alpha/(2n)
 * Symbols  values        x_i, one population  m3
 *          sides         one: the side was known before; two: either
 *          significance  alpha
 * Returns  place and value of the farthest, G, its critical value, verdict
 * Assumes  normal values otherwise; one outlier: two together hide each other
 * Cost     O(values)
 * Source   NIST/SEMATECH e-Handbook 1.3.5.17.1
 */
export const outlierTest = ({ values, sides, significance }: OutlierInputs): OutlierOutputs => {
  const n = values.length;
  const { mean, sd = 0 } = univariate(values);
  const distances = values.map((value) => Math.abs(value - mean));
  const at = distances.indexOf(Math.max(...distances));
  const t = -studentQuantile(significance / (sides === 'one' ? n : 2 * n), n - 2);
  const statistic = distances[at]! / sd;
  const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
  const verdict = statistic > critical ? 'outlier' : 'none';
  return { place: at + 1, value: values[at]!, statistic, critical, verdict };
};

export const outlierTestSheet = defineSheet<OutlierInputs, OutlierOutputs>({
  id: 'contents/outlier-test',
  version: 1,
  inputs: {
    values: weighedList('volume', 'x_i', { ...fillVolumes, fewest: 3 }),
    sides: choiceField<OutlierSides>('\\text{sides}', outlierSides, 'two'),
    significance: numberField('ratio', '\\alpha', { ...significances, assumed: 0.05 }),
  },
  outputs: {
    place: numberField('count', 'i'),
    value: weighedField('volume', 'x_i'),
    statistic: numberField('ratio', 'G'),
    critical: numberField('ratio', 'G_\\alpha'),
    verdict: choiceField<OutlierVerdict>('\\text{verdict}', outlierVerdicts),
  },
  formula: [
    'G = \\frac{\\max |x_i - \\bar x|}{s}, \\quad G_\\alpha = \\frac{n - 1}{\\sqrt n} \\sqrt{\\frac{t^2}{n - 2 + t^2}}, \\quad t = t_{1 - \\alpha/n,\\, n-2} \\text{ or } t_{1 - \\alpha/(2n),\\, n-2}',
  ],
  limits: [
    { code: 'OUTLIER_FEW', broken: ({ values }) => values.length < 7 },
    { code: 'OUTLIER_FOUND', broken: (_, { verdict }) => verdict === 'outlier' },
  ],
  sources: [handbook('1.3.5.17.1')],
  check: ({ values }) =>
    (univariate(values).sd ?? 0) > 0 ? [] : [{ code: 'CHART_NO_RANGE', path: 'values' }],
  compute: outlierTest,
});
