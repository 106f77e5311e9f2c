import type { DoubtedLanes } from './doubted-lanes.ts';
import type { EstimateBasis, LaneEstimate } from './lane-estimate.ts';
import type { Residual } from './residuals.ts';
import { swappedBottles } from './swapped.ts';
import type { FillTrial } from './trial.ts';

/** What the trials can't tell, or what in them can't be right: for people to judge, with intervals that own it. */
export interface Doubt {
  readonly code:
    | 'no-trials'
    | 'one-preset'
    | 'one-flow'
    | 'no-times'
    | 'only-overflowed'
    | 'few-bottles'
    | 'after-run-negative'
    | 'unlike-book'
    | 'outlier'
    | 'bottles-swapped'
    | 'lanes-swapped'
    | 'lanes-supposed'
    | 'more-than-stated';
  /** Tags. */
  readonly lanes: readonly string[];
  /** Places of trials in the list. */
  readonly trials: readonly number[];
}

/** Presets, or flows, nearer to each other than this share tell of one. */
const onePreset = 0.1;
const oneFlow = 0.15;
/** With fewer degrees of freedom nothing is said of a scatter. */
const leastDof = 3;
/** So many times what was stated. */
const overStated = 4;

const narrow = (values: readonly number[], share: number): boolean =>
  values.length === 0 || Math.max(...values) - Math.min(...values) <= share * Math.max(...values);

export const doubtsOf = (
  { fit, readings, setups }: EstimateBasis,
  trials: readonly FillTrial[],
  lanes: readonly LaneEstimate[],
  residuals: readonly Residual[],
  { unlike, negative }: DoubtedLanes,
  exchanged: readonly number[],
): readonly Doubt[] => {
  const doubts: Doubt[] = [];
  const say = (code: Doubt['code'], of: readonly number[] = [], at: readonly number[] = []): void => {
    doubts.push({ code, lanes: of.map((lane) => lanes[lane]!.lane), trials: at });
  };
  lanes.forEach((lane, l) => {
    const presets: number[] = [];
    const flows: number[] = [];
    let times = 0;
    let bounds = 0;
    readings.forEach((each, s) => {
      const i = each.setup.lanes.indexOf(l);
      if (i < 0) return;
      if (each.volumes[i]!.length > 0) {
        presets.push(each.setup.presets[i]!);
        flows.push(fit.answers[s]!.flows[i]!);
      }
      times += each.times[i]!.length;
      bounds += each.bounds[i]!.length;
    });
    if (lane.trials === 0) say('no-trials', [l]);
    else {
      if (presets.length === 0 && bounds > 0) say('only-overflowed', [l]);
      else if (narrow(presets, onePreset)) say('one-preset', [l]);
      if (presets.length > 0 && narrow(flows, oneFlow)) say('one-flow', [l]);
      if (times === 0) say('no-times', [l]);
    }
    if (lane.trials > 0 && negative.includes(l)) say('after-run-negative', [l]);
    if (unlike.includes(l)) say('unlike-book', [l]);
  });
  if (fit.volumeNoise.dof < leastDof) say('few-bottles');
  const supposed = [...new Set(setups.flatMap((each) => each.supposed))].sort((a, b) => a - b);
  if (supposed.length > 0) say('lanes-supposed', supposed);
  for (const { trial, lane, outlying } of residuals) if (outlying) say('outlier', [lane], [trial]);
  for (const pair of swappedBottles(trials, residuals)) say('bottles-swapped', pair.lanes, pair.trials);
  if (exchanged.length > 0) say('lanes-swapped', exchanged);
  const stated = readings.flatMap((each) => each.volumes.flat());
  const typical = stated.reduce((sum, each) => sum + each.stated, 0) / Math.max(1, stated.length);
  if (
    fit.volumeNoise.dof >= leastDof &&
    fit.volumeNoise.own > overStated * overStated * typical &&
    typical > 0
  ) {
    const share = Math.sqrt(fit.volumeNoise.own) / Math.max(...stated.map(({ value }) => value), 0);
    // a lane may well scatter more than a good balance; beyond this it is no filler's scatter
    if (share > 0.01) say('more-than-stated');
  }
  return doubts;
};
