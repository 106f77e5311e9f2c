import { studentQuantile } from '../statistics/student.ts';
import type { Allowance } from './allowances.ts';
import type { LanesEstimate } from './estimate-lanes.ts';
import { settledPresets } from './settled-presets.ts';
import { type Estimated, estimatedOf } from './student-sum.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

export interface VolumePresetInput {
  readonly estimate: LanesEstimate;
  readonly floor: UncertainFloor;
  readonly allowances?: readonly Allowance[];
  /** On the label, at the temperature of the fill, m3. */
  readonly label: number;
  /** Tolerable deficiency by the rule that was agreed, at the same temperature, m3. */
  readonly deficiency: number;
  /** What the mean must keep above the label so that a lot passes the rule's test of its mean, m3. */
  readonly testMargin?: number;
  /** Share of bottles that may lie below the label less the deficiency, by the rule; 2.5 % where it is left out. */
  readonly belowOnce?: number;
  /** Share that may lie below the label less twice the deficiency; none by the rule, one in ten thousand in practice. */
  readonly belowTwice?: number;
  /** Chance that the mean of each lane is at least what is wanted; 0.95 where it is left out. */
  readonly goal?: number;
}

export type VolumeLimit = 'mean' | 'once' | 'twice';

export interface VolumePreset {
  readonly lane: string;
  readonly preset: number;
  /** Mean volume that is foretold, m3. */
  readonly volume: number;
  readonly mean: Estimated;
  /** Mean volume that the rule wants, m3, and which of its limits does. */
  readonly wanted: number;
  readonly limit: VolumeLimit;
  /** What a bottle gets above the label on average, m3. */
  readonly giveaway: number;
}

const usualBelowOnce = 0.025;
const usualBelowTwice = 1e-4;
const usualGoal = 0.95;

/**
 * Counts for a mean volume above the label that keeps the contents rule.
 *
 * Method   wanted mean = max(Q + margin, Q - T + t(1 - 2.5 %) s, Q - 2T + t(1 - 1e-4) s), s the lane's own spread with its
 *          degrees of freedom; N the smallest at which the mean lies above it with the goal's chance
 * Returns  undefined where some lane can never reach its count
 * Source   reference, contents, F20
 */
export const presetsForVolume = (input: VolumePresetInput): readonly VolumePreset[] | undefined => {
  const { estimate, floor, allowances = [], label, deficiency, testMargin = 0 } = input;
  const { belowOnce = usualBelowOnce, belowTwice = usualBelowTwice, goal = usualGoal } = input;
  const { value: spread, dof } = estimate.ownSpread;
  const limits: readonly (readonly [VolumeLimit, number])[] = [
    ['mean', label + testMargin],
    ['once', label - deficiency + studentQuantile(1 - belowOnce, dof) * spread],
    ['twice', label - 2 * deficiency + studentQuantile(1 - belowTwice, dof) * spread],
  ];
  const [limit, wanted] = limits.reduce((most, each) => (each[1] > most[1] ? each : most));
  const settled = settledPresets(estimate.basis, { floor, allowances }, (figure) => {
    const mean = estimatedOf(figure.value, figure.parts);
    return wanted + studentQuantile(goal, mean.dof) * mean.deviation;
  });
  return settled?.presets.map((preset, i) => {
    const { value, parts } = settled.forecast.volumes[i]!;
    const { tag } = estimate.basis.model.scales[i]!.lane;
    return {
      lane: tag,
      preset,
      volume: value,
      mean: estimatedOf(value, parts),
      wanted,
      limit,
      giveaway: value - label,
    };
  });
};
