import { studentQuantile } from '../../statistics/student.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, presetCounts } from './fill-bounds.ts';
import { leastSquaresTheory } from './fill-sources.ts';
import { beyondTrials, fewTrials, laneLineOf, laneLineProblems } from './lane-line-of.ts';

interface LaneLineInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
  readonly preset: number;
  readonly confidence: number;
}

interface LaneLineOutputs {
  readonly afterRun: number;
  readonly perCount: number;
  readonly afterRunUncertainty: number;
  readonly perCountUncertainty: number;
  readonly correlation: number;
  readonly scatter: number;
  readonly dof: number;
  readonly volume: number;
  readonly meanUncertainty: number;
  readonly meanBand: number;
  readonly singleBand: number;
  readonly afterRunRatio: number;
  readonly ratioNeeded: number;
}

export const laneLineSheet = defineSheet<LaneLineInputs, LaneLineOutputs>({
  id: 'contents/lane-line',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 3 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 3 }),
    preset: numberField('count', 'N_0', presetCounts),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    afterRun: weighedField('volume', 'a'),
    perCount: weighedField('volume', 'b'),
    afterRunUncertainty: weighedField('volume', 'u(a)'),
    perCountUncertainty: weighedField('volume', 'u(b)'),
    correlation: numberField('ratio', 'r'),
    scatter: weighedField('volume', 's'),
    dof: numberField('count', '\\nu'),
    volume: weighedField('volume', 'V_0'),
    meanUncertainty: weighedField('volume', 'u(V_0)'),
    meanBand: weighedField('volume', 'B_m'),
    singleBand: weighedField('volume', 'B_1'),
    afterRunRatio: numberField('ratio', 't_a'),
    ratioNeeded: numberField('ratio', 't'),
  },
  formula: [
    'b = \\frac{S_{NV}}{S_{NN}}, \\quad a = \\bar V - b \\bar N, \\quad s^2 = \\frac{\\sum (V_i - a - b N_i)^2}{n - 2}',
    'u(b) = \\frac{s}{\\sqrt{S_{NN}}}, \\quad u(a) = s \\sqrt{\\frac 1n + \\frac{\\bar N^2}{S_{NN}}}, \\quad r = - \\bar N \\frac{u(b)}{u(a)}',
    'V_0 = a + b N_0, \\quad u(V_0) = s \\sqrt{\\frac 1n + \\frac{(N_0 - \\bar N)^2}{S_{NN}}}',
    'B_m = t\\, u(V_0), \\quad B_1 = t \\sqrt{s^2 + u^2(V_0)}, \\quad t = t_{(1+P)/2,\\, n-2}, \\quad t_a = \\frac{a}{u(a)}',
  ],
  limits: [
    { code: 'LINE_FEW_TRIALS', broken: ({ counts }) => fewTrials(counts) },
    { code: 'LINE_BEYOND_TRIALS', broken: ({ counts, preset }) => beyondTrials(counts, preset) },
    {
      code: 'LINE_AFTER_RUN_UNSURE',
      broken: (_, { afterRunRatio, ratioNeeded }) => Math.abs(afterRunRatio) <= ratioNeeded,
    },
    {
      code: 'LINE_AFTER_RUN_REAL',
      broken: (_, { afterRunRatio, ratioNeeded }) => Math.abs(afterRunRatio) > ratioNeeded,
    },
  ],
  sources: [leastSquaresTheory],
  check: ({ counts, volumes }) => laneLineProblems(counts, volumes),
  compute: (i) => {
    const line = laneLineOf(i.counts, i.volumes);
    const t = studentQuantile(0.5 * (1 + i.confidence), line.dof);
    const variance = line.varianceAt(i.preset);
    return {
      afterRun: line.afterRun,
      perCount: line.perCount,
      afterRunUncertainty: line.afterRunUncertainty,
      perCountUncertainty: line.perCountUncertainty,
      correlation: line.correlation,
      scatter: line.scatter,
      dof: line.dof,
      volume: line.afterRun + line.perCount * i.preset,
      meanUncertainty: Math.sqrt(variance),
      meanBand: t * Math.sqrt(variance),
      singleBand: t * Math.sqrt(line.scatter ** 2 + variance),
      afterRunRatio: line.afterRun / line.afterRunUncertainty,
      ratioNeeded: t,
    };
  },
});
