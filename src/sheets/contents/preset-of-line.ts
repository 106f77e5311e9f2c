import type { Problem } from '../../quantity/problem.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, presetCounts, someFillVolumes } from './fill-bounds.ts';
import { leastSquaresTheory } from './fill-sources.ts';
import { beyondTrials, fewTrials, type LaneLine, laneLineOf, laneLineProblems } from './lane-line-of.ts';

interface PresetOfLineInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
  readonly target: number;
  readonly repeats: number;
  readonly confidence: number;
}

interface PresetOfLineOutputs {
  readonly preset: number;
  readonly uncertainty: number;
  readonly slopeDoubt: number;
  readonly lowest: number;
  readonly highest: number;
}

/** g of Fieller: how far the slope itself is in doubt; from one on no limits exist. */
const slopeDoubtOf = ({ perCount, perCountUncertainty, dof }: LaneLine, confidence: number): number =>
  ((studentQuantile(0.5 * (1 + confidence), dof) * perCountUncertainty) / perCount) ** 2;

/**
 * Preset at which a lane gives a volume, read backwards from its line, with Fieller's limits.
 *
 * Method   the presets at which the volume lies within t standard deviations of the line: a quadratic in N
 * Symbols  line     of the lane
 *          target   V_t  volume aimed at                              m3
 *          repeats  k    future fills whose mean is to hit it         >= 1
 * Returns  preset, its standard uncertainty and its limits
 * Assumes  g < 1, which the sheet checks
 * Cost     O(fills)
 * Source   E. C. Fieller, 1954 (memory); derived as the roots of (V_t - a - bN)^2 = t^2 var
 */
const presetOfLine = (line: LaneLine, { counts, target, repeats, confidence }: PresetOfLineInputs) => {
  const { afterRun: a, perCount: b, perCountUncertainty: ub, scatter: s } = line;
  const t = studentQuantile(0.5 * (1 + confidence), line.dof);
  const g = slopeDoubtOf(line, confidence);
  const centre = counts.reduce((sum, n) => sum + n, 0) / counts.length;
  const far = target - (a + b * centre);
  const preset = (target - a) / b;
  const own = s * s * (1 / repeats + 1 / counts.length);
  const half = (t * Math.sqrt(own * (1 - g) + (far * (ub / b)) ** 2)) / b;
  return {
    preset,
    uncertainty: Math.sqrt((s * s) / repeats + line.varianceAt(preset)) / b,
    slopeDoubt: g,
    lowest: centre + (far / b - half) / (1 - g),
    highest: centre + (far / b + half) / (1 - g),
  };
};

const inverseProblems = (i: PresetOfLineInputs): readonly Problem[] => {
  const problems = laneLineProblems(i.counts, i.volumes);
  if (problems.length > 0) return problems;
  const doubt = slopeDoubtOf(laneLineOf(i.counts, i.volumes), i.confidence);
  return doubt < 1 ? [] : [{ code: 'LINE_SLOPE_UNSURE', path: 'volumes', given: doubt, allowed: '< 1' }];
};

export const presetOfLineSheet = defineSheet<PresetOfLineInputs, PresetOfLineOutputs>({
  id: 'contents/preset-of-line',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 3 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 3 }),
    target: weighedField('volume', 'V_t', someFillVolumes),
    repeats: numberField('count', 'k', { least: 1, most: 1e6, assumed: 1 }),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    preset: numberField('count', 'N'),
    uncertainty: numberField('count', 'u(N)'),
    slopeDoubt: numberField('ratio', 'g'),
    lowest: numberField('count', 'N_-'),
    highest: numberField('count', 'N_+'),
  },
  formula: [
    'N = \\frac{V_t - a}{b}, \\quad u(N) = \\frac sb \\sqrt{\\frac 1k + \\frac 1n + \\frac{(N - \\bar N)^2}{S_{NN}}}, \\quad g = \\frac{t^2 u^2(b)}{b^2}',
    'N_\\pm: \\quad (V_t - a - b N)^2 = t^2 s^2 \\left( \\frac 1k + \\frac 1n + \\frac{(N - \\bar N)^2}{S_{NN}} \\right)',
  ],
  limits: [
    { code: 'LINE_FEW_TRIALS', broken: ({ counts }) => fewTrials(counts) },
    { code: 'LINE_BEYOND_TRIALS', broken: ({ counts }, { preset }) => beyondTrials(counts, preset) },
    { code: 'LINE_SLOPE_DOUBT', broken: (_, { slopeDoubt }) => slopeDoubt >= 0.05 },
  ],
  sources: [leastSquaresTheory],
  check: inverseProblems,
  compute: (i) => presetOfLine(laneLineOf(i.counts, i.volumes), i),
});
