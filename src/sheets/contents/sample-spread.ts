import type { Kind } from '../../quantity/kinds.ts';
import { chiSquaredQuantile } from '../../statistics/chi-squared.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { toleranceFactor } from '../../statistics/tolerance-factor.ts';
import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { guideToUncertainty } from './weighing-sources.ts';

interface SampleSpreadInputs {
  readonly values: readonly number[];
  readonly confidence: number;
  readonly coverage: number;
}

/** What a few measured pieces say of all of them. */
export interface SampleSpread {
  readonly mean: number;
  readonly spread: number;
  readonly meanLow: number;
  readonly meanHigh: number;
  readonly spreadLow: number;
  readonly spreadHigh: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Mean and spread of a few pieces, with bounds, and the interval in which nearly all pieces lie.
 *
 * Method   mean +- t s/sqrt n;  s sqrt((n-1)/chi2) at either end, each one-sided;  mean +- k s
 *          k: one-sided factor of the share (1 + coverage)/2 at the confidence (1 + confidence)/2, on both sides
 * Symbols  values      [n]     n >= 2
 *          confidence  scalar  of every bound
 *          coverage    scalar  share of all pieces that the interval holds
 * Returns  in the unit of the values
 * Assumes  normal spread: pieces of several moulds are looked at apart
 * Cost     O(n), besides the tolerance factor
 * Source   Student, chi-squared and non-central t; two one-sided bounds make a slightly wide two-sided interval
 */
export const sampleSpread = ({ values, confidence, coverage }: SampleSpreadInputs): SampleSpread => {
  const n = values.length;
  const { mean, sd = 0 } = univariate(values);
  const half = (studentQuantile((1 + confidence) / 2, n - 1) * sd) / Math.sqrt(n);
  const atLeast = (p: number): number => sd * Math.sqrt((n - 1) / chiSquaredQuantile(p, n - 1));
  const reach = toleranceFactor(n, (1 + coverage) / 2, (1 + confidence) / 2) * sd;
  return {
    mean,
    spread: sd,
    meanLow: mean - half,
    meanHigh: mean + half,
    spreadLow: atLeast(confidence),
    spreadHigh: atLeast(1 - confidence),
    low: mean - reach,
    high: mean + reach,
  };
};

/** The same for each kind of quantity that is measured on a bottle. */
export const sampleSpreadSheet = (id: string, kind: Kind) =>
  defineSheet<SampleSpreadInputs, SampleSpread>({
    id,
    version: 1,
    inputs: {
      values: listField(kind, 'x_i', { least: 0, most: 1e3, fewest: 2 }),
      confidence: numberField('ratio', '\\gamma', { least: 0.5, most: 0.999, assumed: 0.95 }),
      coverage: numberField('ratio', 'p', { least: 0.5, most: 0.9999, assumed: 0.99 }),
    },
    outputs: {
      mean: numberField(kind, '\\bar x'),
      spread: numberField(kind, 's'),
      meanLow: numberField(kind, '\\bar x_-'),
      meanHigh: numberField(kind, '\\bar x_+'),
      spreadLow: numberField(kind, '\\sigma_-'),
      spreadHigh: numberField(kind, '\\sigma_+'),
      low: numberField(kind, 'x_-'),
      high: numberField(kind, 'x_+'),
    },
    formula: [
      '\\bar x_\\pm = \\bar x \\pm t_{(1+\\gamma)/2,\\,n-1}\\, \\frac{s}{\\sqrt n}',
      '\\sigma_- = s \\sqrt{\\frac{n-1}{\\chi^2_{\\gamma,\\,n-1}}}, \\quad \\sigma_+ = s \\sqrt{\\frac{n-1}{\\chi^2_{1-\\gamma,\\,n-1}}} \\quad \\text{(each one-sided)}',
      'x_\\pm = \\bar x \\pm k\\!\\left( n,\\ \\tfrac{1+p}{2},\\ \\tfrac{1+\\gamma}{2} \\right) s',
    ],
    limits: [
      // by then the reach is over five standard deviations and says little
      { code: 'SPREAD_FEW', broken: ({ values }) => values.length < 5 },
      { code: 'SPREAD_NONE', broken: (_, { spread }) => spread === 0 },
    ],
    sources: [
      guideToUncertainty,
      {
        title: 'one-sided tolerance factors of the non-central t distribution',
        place: 'independent script',
        mark: 'computed',
      },
    ],
    compute: sampleSpread,
  });
