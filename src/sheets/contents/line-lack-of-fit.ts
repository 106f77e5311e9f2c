import type { Problem } from '../../quantity/problem.ts';
import { fQuantile, fTails } from '../../statistics/f-distribution.ts';
import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, presetCounts } from './fill-bounds.ts';
import { leastSquaresTheory } from './fill-sources.ts';
import { laneLineOf, laneLineProblems } from './lane-line-of.ts';

interface LackOfFitInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
  readonly confidence: number;
}

interface LackOfFitOutputs {
  readonly ratio: number;
  readonly ratioNeeded: number;
  readonly chance: number;
  readonly repeatSpread: number;
}

const groupsOf = ({ counts, volumes }: LackOfFitInputs): readonly (readonly number[])[] =>
  [...new Set(counts)].map((count) => volumes.filter((_, i) => counts[i] === count));

const repeatSquares = (groups: readonly (readonly number[])[]): number =>
  groups.reduce((sum, group) => {
    const { sd = 0 } = univariate(group);
    return sum + (group.length - 1) * sd * sd;
  }, 0);

const lackOfFitProblems = (i: LackOfFitInputs): readonly Problem[] => {
  const problems = laneLineProblems(i.counts, i.volumes);
  if (problems.length > 0) return problems;
  const groups = groupsOf(i);
  if (groups.length < 3)
    return [{ code: 'FIT_FEW_PRESETS', path: 'counts', given: groups.length, allowed: '3' }];
  return repeatSquares(groups) > 0 ? [] : [{ code: 'FIT_NO_REPEATS', path: 'counts' }];
};

/**
 * Is a straight line enough for a lane?
 *
 * Method   scatter of the presets' means about the line against scatter of repeats at one preset
 * Symbols  counts   N_i  three different or more, some repeated
 *          volumes  V_i  m3
 * Returns  F, the F that would be needed, chance of such an F on a straight line, spread of repeats
 * Cost     O(fills presets)
 * Source   N. R. Draper, H. Smith, Applied Regression Analysis, lack of fit and pure error (memory)
 */
const lackOfFit = (i: LackOfFitInputs): LackOfFitOutputs => {
  const groups = groupsOf(i);
  const line = laneLineOf(i.counts, i.volumes);
  const pure = repeatSquares(groups);
  const [between, within] = [groups.length - 2, i.counts.length - groups.length];
  const lack = Math.max(0, line.scatter ** 2 * line.dof - pure);
  const ratio = lack / between / (pure / within);
  return {
    ratio,
    ratioNeeded: fQuantile(i.confidence, between, within),
    chance: fTails(ratio, between, within).upper,
    repeatSpread: Math.sqrt(pure / within),
  };
};

export const lineLackOfFitSheet = defineSheet<LackOfFitInputs, LackOfFitOutputs>({
  id: 'contents/line-lack-of-fit',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 4 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 4 }),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    ratio: numberField('ratio', 'F'),
    ratioNeeded: numberField('ratio', 'F_P'),
    chance: numberField('ratio', 'p'),
    repeatSpread: weighedField('volume', 's_r'),
  },
  formula: [
    'F = \\frac{(S_{\\text{line}} - S_{\\text{repeats}})/(m - 2)}{S_{\\text{repeats}}/(n - m)}, \\quad s_r = \\sqrt{\\frac{S_{\\text{repeats}}}{n - m}}',
  ],
  limits: [{ code: 'FIT_CURVED', broken: (_, { ratio, ratioNeeded }) => ratio > ratioNeeded }],
  sources: [leastSquaresTheory],
  check: lackOfFitProblems,
  compute: lackOfFit,
});
