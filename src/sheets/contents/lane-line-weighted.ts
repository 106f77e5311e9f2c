import { studentQuantile } from '../../statistics/student.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { chances, fillVolumes, presetCounts, spreads } from './fill-bounds.ts';
import { leastSquaresTheory } from './fill-sources.ts';
import { beyondTrials, fewTrials, laneLineOf, laneLineProblems } from './lane-line-of.ts';

interface WeightedLineInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
  readonly spreads: readonly number[];
  readonly preset: number;
  readonly presetSpread: number;
  readonly confidence: number;
}

interface WeightedLineOutputs {
  readonly afterRun: number;
  readonly perCount: number;
  readonly afterRunUncertainty: number;
  readonly perCountUncertainty: number;
  readonly correlation: number;
  readonly spreadRatio: number;
  readonly volume: number;
  readonly meanBand: number;
  readonly singleBand: number;
}

const weightsOf = ({ spreads }: WeightedLineInputs): readonly number[] => spreads.map((s) => 1 / (s * s));

export const laneLineWeightedSheet = defineSheet<WeightedLineInputs, WeightedLineOutputs>({
  id: 'contents/lane-line-weighted',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 3 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 3 }),
    spreads: weighedList('volume', '\\sigma_i', { ...spreads, fewest: 3 }),
    preset: numberField('count', 'N_0', presetCounts),
    presetSpread: weighedField('volume', '\\sigma_0', spreads),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    afterRun: weighedField('volume', 'a'),
    perCount: weighedField('volume', 'b'),
    afterRunUncertainty: weighedField('volume', 'u(a)'),
    perCountUncertainty: weighedField('volume', 'u(b)'),
    correlation: numberField('ratio', 'r'),
    spreadRatio: numberField('ratio', 's'),
    volume: weighedField('volume', 'V_0'),
    meanBand: weighedField('volume', 'B_m'),
    singleBand: weighedField('volume', 'B_1'),
  },
  formula: [
    'w_i = \\frac{1}{\\sigma_i^2}, \\quad \\min \\sum w_i (V_i - a - b N_i)^2 = (n - 2) s^2',
    'V_0 = a + b N_0, \\quad B_1 = t\\, s \\sqrt{\\sigma_0^2 + \\frac 1W + \\frac{(N_0 - \\bar N_w)^2}{S_{NN,w}}}',
  ],
  limits: [
    { code: 'LINE_FEW_TRIALS', broken: ({ counts }) => fewTrials(counts) },
    { code: 'LINE_BEYOND_TRIALS', broken: ({ counts, preset }) => beyondTrials(counts, preset) },
    {
      code: 'LINE_WEIGHTS_IDLE',
      broken: ({ spreads }) => Math.max(...spreads) <= 2 * Math.min(...spreads),
    },
  ],
  sources: [leastSquaresTheory],
  check: (i) => {
    const lengths = listLengths({ counts: i.counts, spreads: i.spreads });
    return lengths.length > 0 ? lengths : laneLineProblems(i.counts, i.volumes, weightsOf(i));
  },
  compute: (i) => {
    const line = laneLineOf(i.counts, i.volumes, weightsOf(i));
    const t = studentQuantile(0.5 * (1 + i.confidence), line.dof);
    const variance = line.varianceAt(i.preset);
    return {
      afterRun: line.afterRun,
      perCount: line.perCount,
      afterRunUncertainty: line.afterRunUncertainty,
      perCountUncertainty: line.perCountUncertainty,
      correlation: line.correlation,
      spreadRatio: line.scatter,
      volume: line.afterRun + line.perCount * i.preset,
      meanBand: t * Math.sqrt(variance),
      singleBand: t * Math.hypot(line.scatter * i.presetSpread, Math.sqrt(variance)),
    };
  },
});
