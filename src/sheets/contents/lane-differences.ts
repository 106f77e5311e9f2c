import type { Problem } from '../../quantity/problem.ts';
import { analysisOfVariance } from '../../statistics/analysis-of-variance.ts';
import { fQuantile } from '../../statistics/f-distribution.ts';
import { univariate } from '../../statistics/univariate.ts';
import { listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { chances, fillVolumes } from './fill-bounds.ts';
import { referenceSets } from './fill-sources.ts';

interface LaneDifferencesInputs {
  readonly lanes: readonly number[];
  readonly values: readonly number[];
  readonly confidence: number;
}

interface LaneDifferencesOutputs {
  readonly means: readonly number[];
  readonly repeatSpread: number;
  readonly laneSpread: number;
  readonly ratio: number;
  readonly ratioNeeded: number;
  readonly chance: number;
}

/** Values of each lane, lanes in the order of their numbers. */
const groupsOf = ({ lanes, values }: LaneDifferencesInputs): readonly (readonly number[])[] =>
  [...new Set(lanes)].sort((a, b) => a - b).map((lane) => values.filter((_, i) => lanes[i] === lane));

const laneProblems = (i: LaneDifferencesInputs): readonly Problem[] => {
  const lengths = listLengths({ values: i.values, lanes: i.lanes });
  if (lengths.length > 0) return lengths;
  const groups = groupsOf(i);
  if (groups.length < 2) return [{ code: 'LANES_ONE', path: 'lanes', given: i.lanes[0] }];
  if (i.values.length === groups.length) return [{ code: 'LANES_NO_REPEATS', path: 'lanes' }];
  return analysisOfVariance(groups).withinSquares > 0 ? [] : [{ code: 'LANES_NO_SCATTER', path: 'values' }];
};

/**
 * Do lanes differ by more than their fills scatter?
 *
 * Method   one-way analysis of variance; sigma_lane^2 = max(0, (MSB - MSW)/n0), n0 = (N - sum n_i^2/N)/(k - 1)
 * Symbols  lanes       lane of each fill
 *          values      contents of each fill  m3
 *          confidence  of the test
 * Returns  means by lane number, spread of repeats, spread between lanes, F, the F needed, its chance
 * Assumes  fills of one run; every lane scatters alike
 * Cost     O(fills lanes)
 * Source   NIST StRD, analysis of variance
 */
const laneDifferences = (i: LaneDifferencesInputs): LaneDifferencesOutputs => {
  const groups = groupsOf(i);
  const table = analysisOfVariance(groups);
  const all = i.values.length;
  const size = (all - groups.reduce((sum, { length }) => sum + length * length, 0) / all) / table.betweenDof;
  return {
    means: groups.map((group) => univariate(group).mean),
    repeatSpread: Math.sqrt(table.withinMean),
    laneSpread: Math.sqrt(Math.max(0, (table.betweenMean - table.withinMean) / size)),
    ratio: table.f ?? Number.NaN,
    ratioNeeded: fQuantile(i.confidence, table.betweenDof, table.withinDof),
    chance: table.chance ?? Number.NaN,
  };
};

export const laneDifferencesSheet = defineSheet<LaneDifferencesInputs, LaneDifferencesOutputs>({
  id: 'contents/lane-differences',
  version: 1,
  inputs: {
    lanes: listField('count', 'l_i', { least: 1, most: 1000, fewest: 3 }),
    values: weighedList('volume', 'x_i', { ...fillVolumes, fewest: 3 }),
    confidence: numberField('ratio', 'P', { ...chances, assumed: 0.95 }),
  },
  outputs: {
    means: weighedList('volume', '\\bar x_l'),
    repeatSpread: weighedField('volume', 's_r'),
    laneSpread: weighedField('volume', 's_l'),
    ratio: numberField('ratio', 'F'),
    ratioNeeded: numberField('ratio', 'F_P'),
    chance: numberField('ratio', 'p'),
  },
  formula: [
    'F = \\frac{M_b}{M_w}, \\quad M_b = \\frac{\\sum n_l (\\bar x_l - \\bar x)^2}{k - 1}, \\quad M_w = \\frac{\\sum (x_i - \\bar x_l)^2}{N - k} = s_r^2',
    's_l^2 = \\max \\left( 0, \\frac{M_b - M_w}{n_0} \\right), \\quad n_0 = \\frac{N - \\sum n_l^2/N}{k - 1}',
  ],
  limits: [
    { code: 'LANES_DIFFER', broken: (_, { ratio, ratioNeeded }) => ratio > ratioNeeded },
    { code: 'LANES_ALIKE', broken: (_, { ratio, ratioNeeded }) => ratio <= ratioNeeded },
  ],
  sources: [referenceSets('analysis of variance')],
  check: laneProblems,
  compute: laneDifferences,
});
