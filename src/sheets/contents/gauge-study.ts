import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';

/** Range of n normal values in standard deviations, mean d2 and spread d3: computed. */
const ranges: Readonly<Record<number, readonly [d2: number, d3: number]>> = {
  2: [1.1284, 0.8525],
  3: [1.6926, 0.8884],
  4: [2.0588, 0.8798],
  5: [2.3259, 0.8641],
  6: [2.5344, 0.848],
  7: [2.7044, 0.8332],
  8: [2.8472, 0.8198],
  9: [2.97, 0.8078],
  10: [3.0775, 0.7971],
};

/** By which the mean of many ranges of n is multiplied to a standard deviation. */
const ofManyRanges = (n: number): number => 1 / ranges[n]![0];
/** By which a single range of n is: the root mean square of a range is larger than its mean. */
const ofOneRange = (n: number): number => 1 / Math.hypot(...ranges[n]!);

export const trialCounts = ['2', '3'] as const;
export type TrialCount = (typeof trialCounts)[number];

interface GaugeStudyInputs {
  readonly cellRanges: readonly number[];
  readonly operatorMeans: readonly number[];
  readonly partMeans: readonly number[];
  readonly trials: TrialCount;
}

interface GaugeStudyOutputs {
  readonly repeatability: number;
  readonly reproducibility: number;
  readonly measuring: number;
  readonly parts: number;
  readonly total: number;
  readonly share: number;
  readonly categories: number;
}

const rangeOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

/**
 * What weighing and the person who weighs add to the spread of bottles, by the average and range method.
 *
 * Method   EV = mean R K1;  AV^2 = (X K2)^2 - EV^2/(n r);  GRR^2 = EV^2 + AV^2;  PV = R_p K3;  TV^2 = GRR^2 + PV^2
 * Symbols  cellRanges     [m]  range of the trials of each part and operator, or their means by operator
 *          operatorMeans  [k]  mean of each operator, k = 2 or 3; X their range
 *          partMeans      [n]  mean of each part, n = 2 to 10; R_p their range
 *          trials         r, of each operator on each part
 * Returns  standard deviations in the unit of the data; AV 0 where the rest is negative
 * Assumes  every operator measures every part equally often; no part is harder for one of them
 * Cost     O(n)
 * Source   average and range method of measurement systems analysis
 */
const gaugeStudy = ({
  cellRanges,
  operatorMeans,
  partMeans,
  trials,
}: GaugeStudyInputs): GaugeStudyOutputs => {
  const r = Number(trials);
  const n = partMeans.length;
  const meanRange = cellRanges.reduce((a, b) => a + b, 0) / cellRanges.length;
  const repeatability = meanRange * ofManyRanges(r);
  const between = rangeOf(operatorMeans) * ofOneRange(operatorMeans.length);
  const reproducibility = Math.sqrt(Math.max(0, between ** 2 - repeatability ** 2 / (n * r)));
  const measuring = Math.hypot(repeatability, reproducibility);
  const parts = rangeOf(partMeans) * ofOneRange(n);
  const total = Math.hypot(measuring, parts);
  return {
    repeatability,
    reproducibility,
    measuring,
    parts,
    total,
    share: total === 0 ? 0 : measuring / total,
    // a scale that never shows a difference tells nothing apart, whatever the parts
    categories: measuring === 0 ? 1 : Math.max(1, Math.trunc((1.41 * parts) / measuring)),
  };
};

// readings may stand as deviations from the nominal one
const readings = { least: -10, most: 10 } as const;

export const gaugeStudySheet = defineSheet<GaugeStudyInputs, GaugeStudyOutputs>({
  id: 'contents/gauge-study',
  version: 1,
  inputs: {
    cellRanges: listField('volume', 'R_i', { least: 0, most: 1 }),
    operatorMeans: listField('volume', '\\bar X_i', { ...readings, fewest: 2 }),
    partMeans: listField('volume', '\\bar P_i', { ...readings, fewest: 2 }),
    trials: choiceField<TrialCount>('r', trialCounts, '3'),
  },
  outputs: {
    repeatability: numberField('volume', '\\mathrm{EV}'),
    reproducibility: numberField('volume', '\\mathrm{AV}'),
    measuring: numberField('volume', '\\mathrm{GRR}'),
    parts: numberField('volume', '\\mathrm{PV}'),
    total: numberField('volume', '\\mathrm{TV}'),
    share: numberField('ratio', '\\mathrm{GRR}/\\mathrm{TV}'),
    categories: numberField('count', '\\mathrm{ndc}'),
  },
  formula: [
    '\\mathrm{EV} = \\frac{\\bar R}{d_2(r)}, \\quad \\mathrm{AV} = \\sqrt{\\left( \\frac{X}{d_2^*(k)} \\right)^2 - \\frac{\\mathrm{EV}^2}{n r}}, \\quad \\mathrm{PV} = \\frac{R_p}{d_2^*(n)}',
    '\\mathrm{GRR} = \\sqrt{\\mathrm{EV}^2 + \\mathrm{AV}^2}, \\quad \\mathrm{TV} = \\sqrt{\\mathrm{GRR}^2 + \\mathrm{PV}^2}, \\quad \\mathrm{ndc} = \\lfloor 1.41\\, \\mathrm{PV}/\\mathrm{GRR} \\rfloor',
  ],
  limits: [
    { code: 'GAUGE_COARSE', broken: (_, { measuring }) => measuring === 0 },
    // by custom: under a tenth good, over three tenths not usable
    { code: 'GAUGE_POOR', broken: (_, { share }) => share > 0.3 },
    { code: 'GAUGE_FEW_PARTS', broken: ({ partMeans }) => partMeans.length < 5 },
  ],
  sources: [
    {
      title: 'average and range method of measurement systems analysis',
      place: 'formulas not read in the original',
      mark: 'memory',
    },
    { title: 'mean and spread of the range of normal values', place: 'independent script', mark: 'computed' },
  ],
  check: ({ operatorMeans, partMeans }) => [
    ...(operatorMeans.length > 3
      ? [{ code: 'GAUGE_MANY', path: 'operatorMeans', given: operatorMeans.length, allowed: '2 or 3' }]
      : []),
    ...(partMeans.length > 10
      ? [{ code: 'GAUGE_MANY', path: 'partMeans', given: partMeans.length, allowed: '2 to 10' }]
      : []),
  ],
  compute: gaugeStudy,
});
