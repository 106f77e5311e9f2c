import { normalCdf } from '../../statistics/normal.ts';
import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedList } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { fillVolumes } from './fill-bounds.ts';

/** Critical values of the adjusted statistic by significance, mean and standard deviation taken from the sample. */
const critical = { '0.10': 0.631, '0.05': 0.752, '0.025': 0.873, '0.01': 1.035 } as const;
export type NormalitySignificance = keyof typeof critical;
export const normalitySignificances = Object.keys(critical) as NormalitySignificance[];
export const normalityVerdicts = ['normal', 'not normal'] as const;
export type NormalityVerdict = (typeof normalityVerdicts)[number];

const stephens: Source = {
  title: 'M. A. Stephens, tests based on EDF statistics, in Goodness-of-fit Techniques',
  edition: '1986',
  place: 'critical values as in the source text of scipy 1.17 (anderson), adjustment for n likewise',
  mark: 'read',
};

interface NormalityInputs {
  readonly values: readonly number[];
  readonly significance: NormalitySignificance;
}

interface NormalityOutputs {
  readonly statistic: number;
  readonly adjusted: number;
  readonly critical: number;
  readonly verdict: NormalityVerdict;
}

/**
 * Do values look normal?
 *
 * Method   Anderson and Darling: A^2 = -n - 1/n sum (2i - 1)(ln F(y_i) + ln(1 - F(y_(n+1-i)))), with mean and standard
 *          deviation of the sample, times 1 + 0.75/n + 2.25/n^2
 * Symbols  values        x_i  m3
 *          significance  one of four that critical values are printed for
 * Returns  A^2, A^2 adjusted, the critical value, verdict
 * Assumes  one population: mixed lanes make several humps
 * Cost     O(n log n)
 * Source   M. A. Stephens, 1986
 */
const normalityTest = ({ values, significance }: NormalityInputs): NormalityOutputs => {
  const n = values.length;
  const { mean, sd = 0 } = univariate(values);
  const y = values.map((value) => (value - mean) / sd).sort((a, b) => a - b);
  const sum = y.reduce(
    (total, low, i) => total + (2 * i + 1) * (Math.log(normalCdf(low)) + Math.log(normalCdf(-y[n - 1 - i]!))),
    0,
  );
  const statistic = -n - sum / n;
  const adjusted = statistic * (1 + 0.75 / n + 2.25 / (n * n));
  return {
    statistic,
    adjusted,
    critical: critical[significance],
    verdict: adjusted > critical[significance] ? 'not normal' : 'normal',
  };
};

export const normalityTestSheet = defineSheet<NormalityInputs, NormalityOutputs>({
  id: 'contents/normality-test',
  version: 1,
  inputs: {
    values: weighedList('volume', 'x_i', { ...fillVolumes, fewest: 5 }),
    significance: choiceField<NormalitySignificance>('\\alpha', normalitySignificances, '0.05'),
  },
  outputs: {
    statistic: numberField('ratio', 'A^2'),
    adjusted: numberField('ratio', 'A^{*2}'),
    critical: numberField('ratio', 'A_\\alpha^2'),
    verdict: choiceField<NormalityVerdict>('\\text{verdict}', normalityVerdicts),
  },
  formula: [
    'A^2 = -n - \\frac 1n \\sum_{i=1}^n (2 i - 1) \\left( \\ln \\Phi(y_i) + \\ln \\Phi(-y_{n+1-i}) \\right), \\quad y_i = \\frac{x_i - \\bar x}{s}',
    'A^{*2} = A^2 \\left( 1 + \\frac{0.75}{n} + \\frac{2.25}{n^2} \\right)',
  ],
  limits: [
    { code: 'NORMALITY_FEW', broken: ({ values }) => values.length < 20 },
    { code: 'NORMALITY_FAILS', broken: (_, { verdict }) => verdict === 'not normal' },
  ],
  sources: [stephens],
  check: ({ values }) =>
    (univariate(values).sd ?? 0) > 0 ? [] : [{ code: 'CHART_NO_RANGE', path: 'values' }],
  compute: normalityTest,
});
