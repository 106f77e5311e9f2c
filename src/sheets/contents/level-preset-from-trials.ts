import type { Problem } from '../../quantity/problem.ts';
import { normalQuantile } from '../../statistics/normal.ts';
import { studentCdf, studentQuantile } from '../../statistics/student.ts';
import { toleranceFactor } from '../../statistics/tolerance-factor.ts';
import { univariate } from '../../statistics/univariate.ts';
import { brentRoot } from '../brent-root.ts';
import { choiceField, listField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { chances, fillVolumes, presetCounts, someFillVolumes } from './fill-bounds.ts';
import { guideCombined, leastSquaresTheory, presetTheory } from './fill-sources.ts';
import { beyondTrials, fewTrials, type LaneLine, laneLineOf, laneLineProblems } from './lane-line-of.ts';

export const presetRules = ['predictive', 'tolerance'] as const;
/** What the chance is promised of: the next bottle, or a share of all bottles with a confidence. */
export type PresetRule = (typeof presetRules)[number];

interface PresetFromTrialsInputs {
  readonly counts: readonly number[];
  readonly volumes: readonly number[];
  readonly capacities: readonly number[];
  readonly goal: number;
  readonly rule: PresetRule;
  readonly confidence: number;
}

interface PresetFromTrialsOutputs {
  readonly preset: number;
  readonly exactPreset: number;
  readonly volume: number;
  readonly over: number;
  readonly spread: number;
  readonly dof: number;
  readonly factor: number;
  readonly chance: number;
}

/** What is known of delivered less held at one preset. */
interface Doubt {
  /** Standard deviation of one future bottle, its own and that of the estimates. */
  readonly predictive: number;
  /** Degrees of freedom of it, by Welch and Satterthwaite. */
  readonly predictiveDof: number;
  /** Standard deviation of bottles and fills alone. */
  readonly spread: number;
  readonly spreadDof: number;
  /** Bottles that a mean with the same uncertainty would have been taken of. */
  readonly equivalent: number;
}

interface Capacity {
  readonly mean: number;
  readonly variance: number;
  readonly bottles: number;
}

const combinedDof = (parts: readonly (readonly [variance: number, dof: number])[]): number => {
  const whole = parts.reduce((sum, [variance]) => sum + variance, 0);
  return whole ** 2 / parts.reduce((sum, [variance, dof]) => sum + variance ** 2 / dof, 0);
};

const doubtAt = (line: LaneLine, capacity: Capacity, preset: number): Doubt => {
  const fill = line.scatter ** 2;
  const ofLine = line.varianceAt(preset);
  const ofMean = capacity.variance / capacity.bottles;
  const bottleDof = capacity.bottles - 1;
  return {
    predictive: Math.sqrt(fill + ofLine + capacity.variance + ofMean),
    predictiveDof: combinedDof([
      [fill + ofLine, line.dof],
      [capacity.variance + ofMean, bottleDof],
    ]),
    spread: Math.sqrt(fill + capacity.variance),
    spreadDof: combinedDof([
      [fill, line.dof],
      [capacity.variance, bottleDof],
    ]),
    equivalent: (fill + capacity.variance) / (ofLine + ofMean),
  };
};

/** By which the mean must lie over the mean capacity, in volume, and the factor that makes it. */
const neededAt = (doubt: Doubt, { rule, goal, confidence }: PresetFromTrialsInputs) => {
  if (rule === 'predictive') {
    const factor = studentQuantile(goal, doubt.predictiveDof);
    return { factor, over: factor * doubt.predictive, spread: doubt.predictive, dof: doubt.predictiveDof };
  }
  const factor = toleranceFactor(doubt.equivalent, goal, confidence, doubt.spreadDof);
  return { factor, over: factor * doubt.spread, spread: doubt.spread, dof: doubt.spreadDof };
};

const capacityOf = (capacities: readonly number[]): Capacity => {
  const { mean, sd = 0 } = univariate(capacities);
  return { mean, variance: sd * sd, bottles: capacities.length };
};

/** Twice as far as any preset that was tried the slope must have shown itself, or there is none to find. */
const furthest = 1e3;

/** What is over at a preset beyond what is needed; its root is the preset. */
const surplusOf = (i: PresetFromTrialsInputs) => {
  const line = laneLineOf(i.counts, i.volumes);
  const capacity = capacityOf(i.capacities);
  const surplus = (preset: number): number =>
    line.afterRun +
    line.perCount * preset -
    capacity.mean -
    neededAt(doubtAt(line, capacity, preset), i).over;
  return { line, capacity, surplus };
};

const trialProblems = (i: PresetFromTrialsInputs): readonly Problem[] => {
  const problems = laneLineProblems(i.counts, i.volumes);
  if (problems.length > 0) return problems;
  const { surplus } = surplusOf(i);
  const high = furthest * Math.max(...i.counts);
  if (surplus(1) >= 0)
    return [{ code: 'PRESET_TRIALS_BELOW_ONE', path: 'capacities', given: i.capacities[0]! }];
  return surplus(high) > 0 ? [] : [{ code: 'PRESET_NOT_FOUND', path: 'counts', allowed: `<= ${high}` }];
};

/**
 * Smallest whole count at which the level is reached, from weighed fills and measured bottles.
 *
 * Method   predictive: mean over capacity >= t(p, nu) sqrt(s^2 + u^2(V) + s_C^2 + s_C^2/m), nu by Welch-Satterthwaite
 *          tolerance:  mean over capacity >= k sqrt(s^2 + s_C^2), k(n_e, p, confidence) of the noncentral t with
 *          n_e = (s^2 + s_C^2)/(u^2(V) + s_C^2/m); the line's uncertainty u(V) is that at the preset itself
 * Symbols  counts, volumes  N_i, V_i  fills of the lane
 *          capacities       C_j       bottles at the level, m of them
 * Returns  preset, volume over the mean capacity, what it was multiplied from; chance of the next bottle
 * Assumes  normal fills and bottles, independent
 * Cost     some ten evaluations of the line's uncertainty and of a quantile
 * Source   derived; the tolerance factor after NIST/SEMATECH e-Handbook 7.2.6.3 (memory)
 */
const levelPresetFromTrials = (i: PresetFromTrialsInputs): PresetFromTrialsOutputs => {
  const { line, capacity, surplus } = surplusOf(i);
  const exactPreset = brentRoot(surplus, 1, furthest * Math.max(...i.counts));
  const preset = Math.ceil(exactPreset);
  const doubt = doubtAt(line, capacity, preset);
  const { factor, spread, dof } = neededAt(doubt, i);
  const volume = line.afterRun + line.perCount * preset;
  const over = volume - capacity.mean;
  const chance = studentCdf(over / doubt.predictive, doubt.predictiveDof);
  return { preset, exactPreset, volume, over, spread, dof, factor, chance };
};

export const levelPresetFromTrialsSheet = defineSheet<PresetFromTrialsInputs, PresetFromTrialsOutputs>({
  id: 'contents/level-preset-from-trials',
  version: 1,
  inputs: {
    counts: listField('count', 'N_i', { ...presetCounts, fewest: 3 }),
    volumes: weighedList('volume', 'V_i', { ...fillVolumes, fewest: 3 }),
    capacities: weighedList('volume', 'C_j', { ...someFillVolumes, fewest: 2 }),
    goal: numberField('ratio', 'p', { ...chances, assumed: 0.995 }),
    rule: choiceField<PresetRule>('\\text{rule}', presetRules, 'predictive'),
    confidence: numberField('ratio', '\\gamma', { ...chances, most: 0.999, assumed: 0.95 }),
  },
  outputs: {
    preset: numberField('count', 'N'),
    exactPreset: numberField('count', 'N^*'),
    volume: weighedField('volume', 'V'),
    over: weighedField('volume', '\\mu'),
    spread: weighedField('volume', '\\sigma'),
    dof: numberField('count', '\\nu'),
    factor: numberField('ratio', 'k'),
    chance: numberField('ratio', 'P'),
  },
  formula: [
    'V = a + b N, \\quad \\mu = V - \\bar C \\ge k \\sigma',
    '\\text{predictive: } \\sigma^2 = s^2 + u^2(V) + s_C^2 + \\frac{s_C^2}{m}, \\quad k = t_{p,\\nu}',
    '\\text{tolerance: } \\sigma^2 = s^2 + s_C^2, \\quad k = \\frac{t_{\\gamma; \\nu, z_p \\sqrt{n_e}}}{\\sqrt{n_e}}, \\quad n_e = \\frac{\\sigma^2}{u^2(V) + s_C^2/m}',
    '\\nu = \\frac{(\\sum v_i)^2}{\\sum v_i^2/\\nu_i}, \\quad P = T_\\nu \\left( \\frac{\\mu}{\\sigma_{\\text{predictive}}} \\right)',
  ],
  limits: [
    { code: 'LINE_FEW_TRIALS', broken: ({ counts }) => fewTrials(counts) },
    { code: 'LINE_BEYOND_TRIALS', broken: ({ counts }, { preset }) => beyondTrials(counts, preset) },
    {
      code: 'PRESET_DEARLY_UNSURE',
      broken: ({ goal }, { factor }) => factor > 1.5 * normalQuantile(goal),
    },
  ],
  sources: [presetTheory, leastSquaresTheory, guideCombined],
  check: trialProblems,
  compute: levelPresetFromTrials,
});
