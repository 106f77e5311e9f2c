import type { Book } from '../../book/index.ts';
import {
  type LaneEstimate,
  type LanePrediction,
  type LanesEstimate,
  predictOtherFloor,
  type RowForecast,
  rowForecast,
  type TrialAdvice,
  type Within,
} from '../../fill/index.ts';
import type { PredictionScore } from '../../fill/score.ts';
import { type Estimated, withinOf } from '../../fill/student-sum.ts';
import type { UncertainFloor } from '../../fill/uncertain-floor.ts';
import {
  type CapacityFound,
  type FillAsk,
  type FillStory,
  fillStories,
  type GoalPresets,
  type MeasuredSample,
  type NoAnswer,
  type WeighedTrial,
} from '../../floor/fill/index.ts';
import { reachedShare } from '../../floor/fill/reached-share.ts';

export interface FillQuestion {
  readonly book: Book;
  readonly ask: FillAsk & {
    readonly trials: readonly WeighedTrial[];
    readonly samples: readonly MeasuredSample[];
  };
}

/** What a lane does at one count: the mean and a single bottle, m3, and the share of bottles that reach their level. */
export interface CurvePoint {
  readonly preset: number;
  readonly volume: Within;
  readonly bottle: Within;
  readonly reached?: number;
}

/** One lane on the floor of the trials, over a range of counts. */
export interface LaneCurve {
  readonly lane: string;
  readonly points: readonly CurvePoint[];
}

/** What the trials say of a lane, each with its interval. */
export interface LaneValues {
  readonly lane: string;
  readonly trials: number;
  readonly pulses: Within;
  readonly afterRun: Within;
  readonly kv: Within;
  /** Standard deviation of the lane's bottles about its line, m3; where enough were weighed. */
  readonly spread?: number;
}

/** A weighed bottle beside its count. */
export interface Dot {
  /** Place among the trials that were asked of. */
  readonly trial: number;
  readonly lane: string;
  readonly preset: number;
  readonly volume: number;
  readonly overflowed: boolean;
}

/** Everything that the page says of trials, as plain data: it comes out of a worker. */
export interface FillAnswer {
  readonly none: readonly NoAnswer[];
  readonly notes: FillStory['read']['notes'];
  readonly refused: FillStory['read']['refused'];
  readonly slips: FillStory['slips'];
  readonly dots: readonly Dot[];
  readonly confidence: number;
  /** Why the trials give no estimate. */
  readonly problems: LanesEstimate['problems'];
  readonly lanes?: readonly LaneValues[];
  readonly ownSpread?: Estimated;
  readonly residuals: LanesEstimate['residuals'];
  readonly doubts: LanesEstimate['doubts'];
  readonly apart: LanesEstimate['apart'];
  /** Absent until it is worked out, like all that follows. */
  readonly next?: readonly TrialAdvice[];
  readonly presets?: GoalPresets;
  /** On the floor of the trials with the counts that are foretold for, and the lane's level, m3. */
  readonly here?: readonly Pick<
    LanePrediction,
    'lane' | 'preset' | 'volume' | 'time' | 'volumeParts' | 'timeParts'
  >[];
  readonly hereRate?: Within;
  readonly other?: OtherFloorAnswer;
  readonly curves?: readonly LaneCurve[];
  /** The same close about the counts that are set. */
  readonly near?: readonly LaneCurve[];
  /** Volume to the level that the bottles hold, m3. */
  readonly level?: number;
  readonly done: boolean;
}

export type OtherFloorAnswer = Omit<NonNullable<FillStory['other']>, 'floor' | 'score'> & {
  readonly floor: string;
  readonly score?: PredictionScore;
};

const usualConfidence = 0.9;
/** Counts of the line of a lane, as shares of those that are set: over the trials and a little beyond. */
const shares = [0.5, 0.7, 0.9, 1.05] as const;
/** Counts at which the share of bottles that reach their level is looked at, in steps from those that are set. */
const steps = [-8, -6, -5, -4, -3, -2, -1, 0, 1, 2, 4] as const;
/** A step as a share of the count. */
const stepShare = 0.002;

const valuesOf = (lane: LaneEstimate, confidence: number): LaneValues => ({
  lane: lane.lane,
  trials: lane.trials,
  pulses: withinOf(lane.pulses, confidence),
  afterRun: withinOf(lane.afterRun, confidence),
  kv: withinOf(lane.kv, confidence),
  ...(lane.spread === undefined ? {} : { spread: lane.spread.value }),
});

const capacityIn = (presets: GoalPresets | undefined): CapacityFound | undefined =>
  presets !== undefined && 'capacity' in presets ? presets.capacity : undefined;

/** The counts around which the page looks: those of the goal, else those that were tried last. */
const countsAround = (
  { presets, from }: FillStory,
  trials: readonly WeighedTrial[],
): readonly (number | undefined)[] =>
  (from.uncertain?.system.lanes ?? []).map(({ tag, preset }) => {
    const goal = presets !== undefined && 'presets' in presets ? presets.presets : undefined;
    const lanes = goal === undefined ? [] : 'lanes' in goal ? goal.lanes : goal;
    const wanted = lanes.find(({ lane }) => lane === tag)?.preset;
    return (
      wanted ?? trials.findLast((trial) => trial.lane === tag)?.preset ?? (preset > 0 ? preset : undefined)
    );
  });

/** Contents at some rows of counts on the floor of the trials, all lanes running, with the band of a single bottle. */
const curvesOf = (
  estimate: LanesEstimate,
  floor: UncertainFloor,
  rowsOfCounts: readonly (readonly number[])[],
  capacity: CapacityFound | undefined,
  near?: RowForecast | undefined,
): readonly LaneCurve[] => {
  const rows = rowsOfCounts.flatMap((presets) => {
    const forecast = rowForecast(estimate.basis, { floor, allowances: [] }, presets, near?.departures);
    const row = predictOtherFloor({ estimate, floor, presets, forecast });
    if (row === undefined) return [];
    return [{ row, reached: capacity === undefined ? undefined : reachedShare(row, capacity) }];
  });
  return estimate.lanes.map(({ lane }, i) => ({
    lane,
    points: rows.map(({ row, reached }): CurvePoint => {
      const { preset, volume, bottle } = row.lanes[i]!;
      return { preset, volume, bottle, ...(reached === undefined ? {} : { reached: reached[i]! }) };
    }),
  }));
};

const dotsOf = ({ read }: FillStory): readonly Dot[] =>
  read.trials.flatMap(({ trial, fill: { lane, preset, volume, overflow } }) =>
    volume === undefined ? [] : [{ trial, lane, preset, volume, overflowed: overflow !== 'none' }],
  );

/** A story as plain data. */
const answerOf = (story: FillStory, confidence: number): FillAnswer => {
  const { read, slips, none, estimate, presets, next, other, from } = story;
  const found = estimate?.kind === 'estimate' ? estimate.estimate : undefined;
  const level = capacityIn(presets)?.capacity.mean ?? from.inputs.model.level;
  // the estimate counts among those that could be read
  const at = (place: number): number => read.trials[place]?.trial ?? place;
  return {
    none,
    notes: read.notes,
    refused: read.refused,
    slips,
    dots: dotsOf(story),
    confidence,
    problems: estimate?.kind === 'refused' ? estimate.problems : (found?.problems ?? []),
    residuals: (found?.residuals ?? []).map((one) => ({ ...one, trial: at(one.trial) })),
    doubts: (found?.doubts ?? []).map((one) => ({ ...one, trials: one.trials.map(at) })),
    apart: (estimate?.kind === 'refused' ? estimate.apart : (found?.apart ?? [])).map((one) => ({
      ...one,
      trial: at(one.trial),
    })),
    done: found === undefined,
    ...(next === undefined ? {} : { next }),
    ...(found === undefined
      ? {}
      : { lanes: found.lanes.map((lane) => valuesOf(lane, confidence)), ownSpread: found.ownSpread }),
    ...(presets === undefined ? {} : { presets }),
    ...(level === undefined ? {} : { level }),
    ...(other === undefined ? {} : { other: { ...other, floor: other.floor.tag } }),
  };
};

/**
 * What the page says of the trials: first what they say of the lanes, then the counts and the other floor, then the
 * curves.
 */
export function* fillAnswers({ book, ask }: FillQuestion): Generator<FillAnswer> {
  const confidence = ask.confidence ?? usualConfidence;
  let story: FillStory | undefined;
  let base: FillAnswer | undefined;
  for (story of fillStories(book, ask)) {
    base = answerOf(story, confidence);
    yield base;
  }
  if (story === undefined || base === undefined) return;
  const { estimate, presets, other, from } = story;
  const found = estimate?.kind === 'estimate' ? estimate.estimate : undefined;
  const capacity = capacityIn(presets);
  const { uncertain } = from;
  if (found === undefined || uncertain === undefined) return;
  const counts = countsAround(story, ask.trials);
  const known = counts.flatMap((count) => count ?? []);
  const foretold =
    known.length === counts.length
      ? predictOtherFloor({
          estimate: found,
          floor: uncertain,
          presets: other?.presets ?? known,
          confidence,
          ...(from.times === undefined ? {} : { times: from.times }),
        })
      : undefined;
  const withHere: FillAnswer = {
    ...base,
    ...(foretold === undefined
      ? {}
      : {
          here: foretold.lanes.map(({ lane, preset, volume, time, volumeParts, timeParts }) => ({
            lane,
            preset,
            volume,
            time,
            volumeParts,
            timeParts,
          })),
          ...(foretold.rate === undefined ? {} : { hereRate: foretold.rate }),
        }),
  };
  yield withHere;
  if (known.length < counts.length) {
    yield { ...withHere, done: true };
    return;
  }
  const atShares = shares.map((share) => known.map((count) => Math.max(1, Math.round(share * count))));
  const curves = curvesOf(found, uncertain, atShares, capacity);
  yield { ...withHere, curves };
  const atSteps = steps.map((step) =>
    known.map((count) => Math.max(1, count + step * Math.max(1, Math.round(stepShare * count)))),
  );
  // so near to the counts that are set the lanes close in the same order
  const set = rowForecast(found.basis, { floor: uncertain, allowances: [] }, known);
  const near = curvesOf(found, uncertain, atSteps, capacity, set);
  yield { ...withHere, curves, near, done: true };
}
