import type { FloorPrediction, LanePrediction } from './predict-other-floor.ts';
import type { FillTrial } from './trial.ts';

/** What was foretold of one figure against what was then measured. */
export interface Score {
  readonly lane: string;
  readonly of: 'volume' | 'time';
  /** Mean of what was measured: m3 or s. */
  readonly measured: number;
  /** Standard uncertainty of that mean. */
  readonly deviation: number;
  readonly bottles: number;
  readonly foretold: number;
  /** Measured less foretold, in standard deviations of both. */
  readonly standard: number;
  /** The mean lies within the interval that was foretold, wider by what the mean itself leaves open. */
  readonly inside: boolean;
}

export interface PredictionScore {
  readonly scores: readonly Score[];
  readonly inside: number;
  readonly of: number;
  /** Share that should lie inside. */
  readonly confidence: number;
  /** Trials with another count than was foretold for, or that overflowed: they score nothing. */
  readonly apart: readonly number[];
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * A prediction against trials that were made where it speaks of.
 *
 * Method   mean of the bottles of each lane at the count that was foretold for; standard error by the deviation of the
 *          prediction and that of the mean, the latter from the bottles' own scatter or, of one bottle, its stated part, and what all share
 */
export const scorePrediction = (
  prediction: FloorPrediction,
  trials: readonly FillTrial[],
): PredictionScore => {
  const scores: Score[] = [];
  const used = new Set<number>();
  const add = (lane: LanePrediction, of: Score['of']): void => {
    const bottles = trials.flatMap((trial, i) => {
      const value = of === 'volume' ? trial.volume : trial.time;
      const wrong = trial.afterStop === true || trial.throttled === true || trial.preset !== lane.preset;
      if (trial.lane !== lane.lane || wrong || value === undefined) return [];
      if (of === 'volume' && trial.overflow !== 'none') return [];
      used.add(i);
      const { volumeDeviation, commonDeviation, timeDeviation } = trial;
      return of === 'volume'
        ? [{ value, stated: volumeDeviation ?? 0, common: commonDeviation ?? 0 }]
        : [{ value, stated: timeDeviation ?? 0, common: 0 }];
    });
    if (bottles.length === 0) return;
    const measured = meanOf(bottles.map(({ value }) => value));
    const squares = bottles.reduce((sum, { value }) => sum + (value - measured) ** 2, 0);
    const scatter = bottles.length > 1 ? squares / (bottles.length - 1) : 0;
    const stated = meanOf(bottles.map((bottle) => bottle.stated ** 2));
    const common = meanOf(bottles.map((bottle) => bottle.common));
    const deviation = Math.hypot(Math.sqrt(Math.max(scatter, stated) / bottles.length), common);
    const { value, lower, upper, deviation: foretoldBy } = lane[of];
    const wider = Math.hypot(deviation, foretoldBy) / foretoldBy;
    scores.push({
      lane: lane.lane,
      of,
      measured,
      deviation,
      bottles: bottles.length,
      foretold: value,
      standard: (measured - value) / Math.hypot(deviation, foretoldBy),
      inside: measured >= value - (value - lower) * wider && measured <= value + (upper - value) * wider,
    });
  };
  for (const lane of prediction.lanes) {
    add(lane, 'volume');
    add(lane, 'time');
  }
  return {
    scores,
    inside: scores.filter(({ inside }) => inside).length,
    of: scores.length,
    confidence: prediction.confidence,
    apart: trials.flatMap((_, i) => (used.has(i) ? [] : [i])),
  };
};
