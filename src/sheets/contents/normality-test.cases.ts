import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const anderson: Source = {
  title: 'scipy 1.17, stats.anderson',
  place: 'statistic; its printed critical values at n without end',
  mark: 'computed',
};

/** Weights of eleven men in pounds, S. S. Shapiro, M. B. Wilk, 1965, 1 lb written as 1 mL. */
const weights = [148, 154, 158, 160, 161, 162, 166, 170, 182, 195, 236].map((x) => x * 1e-6);

const run = [
  52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6,
  52.1,
].map((x) => x * 1e-6);

export const normalityTestCases: readonly SheetCase[] = [
  {
    name: "Shapiro and Wilk's eleven weights: A^2 0.9468, not normal at 5 %",
    source: anderson,
    inputs: { values: weights },
    outputs: {
      statistic: 0.9467718795989,
      adjusted: 1.0289297699773,
      critical: 0.752,
      verdict: 'not normal',
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['NORMALITY_FAILS'],
  },
  {
    name: 'the same pass at 1 %, just',
    source: anderson,
    inputs: { values: weights, significance: '0.01' },
    outputs: { critical: 1.035, verdict: 'normal' },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'twenty values of a chart: A^2 0.3505, normal',
    source: anderson,
    inputs: { values: run, significance: '0.10' },
    outputs: { statistic: 0.3505387376108, adjusted: 0.3656557206703, critical: 0.631, verdict: 'normal' },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
];
