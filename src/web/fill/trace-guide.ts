import { type TraceGuide, type TracePath, tracePath, traceStep } from '../../fill/index.ts';
import type { RecordedTrial } from '../../record/trials.ts';
import type { FillAnswer } from './fill-answer.ts';
import type { LevelGoal } from './goals.ts';

/** What the record of a bottle says that was filled on the way to a trace; it is data, not words. */
export const traceConditions = 'until a trace shows';

/** Counts of a step where nothing better is known, as a share of the fill. */
const coarseShare = 0.01;
/** A two-sided 90 % interval is so many standard deviations wide. */
const widthIn = 2 * 1.645;

/** Where the estimate lets a bottle of a lane just reach its level. */
export const guideFor = (answer: FillAnswer, goal: LevelGoal, lane: string): TraceGuide | undefined => {
  const set = goal.presets.lanes.find((one) => one.lane === lane);
  const range = goal.ranges.find((one) => one.lane === lane);
  const pulses = answer.lanes?.find((one) => one.lane === lane)?.pulses.value;
  if (set === undefined || range === undefined || pulses === undefined) return undefined;
  const { mean, deviation } = goal.capacity.capacity;
  return {
    expected: Math.round(set.preset - (set.volume - mean) * pulses),
    deviation: Math.hypot((range.upper - range.lower) / widthIn, deviation * pulses),
    coarse: Math.max(1, Math.round(coarseShare * set.preset)),
  };
};

export const isOnPath = ({ conditions }: Pick<RecordedTrial, 'conditions'>): boolean =>
  conditions === traceConditions;

/** The way of a lane so far, out of its records. */
export const pathOf = (trials: readonly RecordedTrial[], lane: string, guide: TraceGuide): TracePath =>
  trials
    .filter((trial) => trial.lane === lane && isOnPath(trial))
    .reduce(
      (path, { preset, overflow }) =>
        overflow === undefined ? path : traceStep(path, { preset, overflow }, guide),
      tracePath(guide),
    );
