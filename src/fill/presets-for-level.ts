import { noncentralTQuantile } from '../statistics/noncentral-t.ts';
import { normalQuantile } from '../statistics/normal.ts';
import { studentCdf, studentQuantile } from '../statistics/student.ts';
import type { Allowance } from './allowances.ts';
import type { LanesEstimate } from './estimate-lanes.ts';
import { meanOverflow } from './mean-overflow.ts';
import { type ForecastFigure, rowForecast } from './row-forecast.ts';
import { settledPresets } from './settled-presets.ts';
import { singleBottle } from './single-bottle.ts';
import { type Estimated, estimatedOf } from './student-sum.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

/** What the bottles hold to their level. */
export interface Capacity {
  /** m3 */
  readonly mean: number;
  /** From bottle to bottle, m3. */
  readonly deviation: number;
  /** Standard uncertainty of the mean, m3. */
  readonly meanDeviation: number;
  /** Bottles measured, less one; infinity for a spread that was stated. */
  readonly dof: number;
}

export interface LevelPresetInput {
  readonly estimate: LanesEstimate;
  /** Where the presets are to be set: the floor of the trials or another. */
  readonly floor: UncertainFloor;
  readonly allowances?: readonly Allowance[];
  readonly capacity: Capacity;
  /** Share of bottles that must reach their level; 0.995 where it is left out. */
  readonly goal?: number;
  /**
   * Predictive: a bottle drawn by chance reaches its level with the goal. Tolerance: with this confidence, at least the
   * goal's share of all bottles does.
   */
  readonly rule?:
    | { readonly kind: 'predictive' }
    | { readonly kind: 'tolerance'; readonly confidence: number };
  /** Bottles of a shift, for what the overflow costs. */
  readonly shift?: number;
}

export interface LanePreset {
  readonly lane: string;
  readonly preset: number;
  /** Mean volume, m3. */
  readonly volume: number;
  readonly mean: Estimated;
  /** Chance that a bottle reaches its level. */
  readonly reached: number;
  /** Mean overflow of a bottle, m3. */
  readonly overflow: number;
}

export interface LevelPresets {
  readonly lanes: readonly LanePreset[];
  /** Mean over the lanes, m3 a bottle. */
  readonly overflow: number;
  /** m3 a shift, where its bottles are known. */
  readonly shiftOverflow?: number;
  /** One count for all lanes, and what it costs more than each lane's own. */
  readonly common: {
    readonly preset: number;
    readonly lanes: readonly LanePreset[];
    readonly overflow: number;
    /** m3 a bottle */
    readonly price: number;
    readonly shiftPrice?: number;
  };
}

const usualGoal = 0.995;

/** Volume of one bottle over what one bottle holds. */
const overCapacity = (
  figure: ForecastFigure,
  estimate: LanesEstimate,
  { mean, deviation, meanDeviation, dof }: Capacity,
  goal: number,
): Estimated => {
  const bottle = singleBottle(figure, estimate, goal, [
    { variance: deviation ** 2, dof },
    { variance: meanDeviation ** 2, dof },
  ]);
  return { ...bottle, value: bottle.value - mean };
};

/** Volume above the capacity that the mean of a lane must keep, m3. */
const marginOf = (
  figure: ForecastFigure,
  { estimate, capacity, rule }: LevelPresetInput,
  goal: number,
): number => {
  const over = overCapacity(figure, estimate, capacity, goal);
  if (rule?.kind !== 'tolerance') return studentQuantile(goal, over.dof) * over.deviation;
  const mean = estimatedOf(0, [
    ...figure.parts,
    { variance: capacity.meanDeviation ** 2, dof: capacity.dof },
  ]);
  // the whole spread is that of single bottles and that of their mean, which is like that of so many bottles
  const single = Math.sqrt(Math.max(over.deviation ** 2 - mean.deviation ** 2, 0));
  const bottles = (single / mean.deviation) ** 2;
  if (!(bottles < 1e6)) return normalQuantile(goal) * single;
  const dof = Math.min(over.dof, 1e6);
  return (
    (noncentralTQuantile(rule.confidence, dof, normalQuantile(goal) * Math.sqrt(bottles)) /
      Math.sqrt(bottles)) *
    single
  );
};

/**
 * Counts at which a bottle reaches its level with the chance that is wanted.
 *
 * Method   smallest whole N with V(N) - C >= t s, t and s of one bottle drawn by chance; after-runs hang on when the other
 *          lanes close, so the row is gone through again until no count changes
 * Returns  undefined where some lane can never reach its count
 * Source   reference, contents, F16 to F18 and F21: rounded up, never to the nearest
 */
export const presetsForLevel = (input: LevelPresetInput): LevelPresets | undefined => {
  const { estimate, floor, capacity, allowances = [], goal = usualGoal, shift } = input;
  const { basis } = estimate;
  const place = { floor, allowances };
  const settled = settledPresets(basis, place, (figure) => capacity.mean + marginOf(figure, input, goal));
  if (settled === undefined) return undefined;
  const lanesOf = (presets: readonly number[], figures: readonly ForecastFigure[]): readonly LanePreset[] =>
    figures.map((figure, i) => {
      const over = overCapacity(figure, estimate, capacity, goal);
      return {
        lane: basis.model.scales[i]!.lane.tag,
        preset: presets[i]!,
        volume: figure.value,
        mean: estimatedOf(figure.value, figure.parts),
        reached: studentCdf(over.value / over.deviation, over.dof),
        overflow: meanOverflow(over.value, over.deviation),
      };
    });
  const meanOf = (lanes: readonly LanePreset[]): number =>
    lanes.reduce((sum, lane) => sum + lane.overflow, 0) / lanes.length;
  const lanes = lanesOf(settled.presets, settled.forecast.volumes);
  const most = Math.max(...settled.presets);
  const together = rowForecast(
    basis,
    place,
    settled.presets.map(() => most),
  );
  if (together === undefined) return undefined;
  const common = lanesOf(
    settled.presets.map(() => most),
    together.volumes,
  );
  const overflow = meanOf(lanes);
  const price = meanOf(common) - overflow;
  return {
    lanes,
    overflow,
    ...(shift === undefined ? {} : { shiftOverflow: overflow * shift }),
    common: {
      preset: most,
      lanes: common,
      overflow: overflow + price,
      price,
      ...(shift === undefined ? {} : { shiftPrice: price * shift }),
    },
  };
};
