import type { ShiftFigures } from '../../line/shift/index.ts';
import { availabilityShown } from '../../sheets/rate/availability-shown.ts';
import { meanTimeShown } from '../../sheets/rate/mean-time-shown.ts';
import { runToShowMeanTime } from '../../sheets/rate/run-to-show-mean-time.ts';

/** Stops of the line as one: mean time running between two, and mean time of one, s. */
export interface StopTimes {
  readonly between: number;
  readonly clear: number;
}

/**
 * What makes the line stand, all causes together, as it is felt where the line's minutes are counted.
 *
 * Method   between: (shift - lost)/stops;  clear: lost/stops
 * Returns  undefined where nothing ever stopped
 */
export const stopTimes = (
  { causes }: Pick<ShiftFigures, 'causes'>,
  duration: number,
): StopTimes | undefined => {
  const stops = causes.reduce((sum, { strikes }) => sum + strikes.mean, 0);
  const lost = causes.reduce((sum, cause) => sum + cause.lost.mean, 0);
  return stops > 0 && lost > 0 && lost < duration
    ? { between: (duration - lost) / stops, clear: lost / stops }
    : undefined;
};

/**
 * Mean time between stops that leaves an agreed share of the time for running.
 *
 * Method   A = U/(U + D), so U = A D/(1 - A)
 */
export const agreedBetween = (efficiency: number, clear: number): number =>
  (efficiency * clear) / (1 - efficiency);

export interface PlannedRun {
  readonly allowed: number;
  /** s of running that the run needs */
  readonly running: number;
  /** Chance that a line like this one passes. */
  readonly passing: number;
}

/** Run lengths by the stops that each may have. */
export const plannedRuns = (
  agreed: number,
  expected: number,
  confidence: number,
  allowed: readonly number[],
): readonly PlannedRun[] =>
  allowed.map((stops) => ({
    allowed: stops,
    ...runToShowMeanTime({ agreed, allowed: stops, confidence, expected }),
  }));

export interface ReachedRun {
  /** Good bottles a second over the whole run. */
  readonly rate: number;
  /** s between stops, lower bound */
  readonly between: number;
  /** Share of the time running, lower bound; absent where nothing stopped. */
  readonly availability?: number;
}

/** What a run that took place shows at least. */
export const reachedRun = (
  run: { readonly seconds: number; readonly stood: number; readonly good: number; readonly stops: number },
  confidence: number,
): ReachedRun => {
  const { seconds, stood, good, stops } = run;
  const running = seconds - stood;
  return {
    rate: good / seconds,
    between: meanTimeShown({ running, stops, endedBy: 'time', confidence }),
    ...(stops > 0 && stood > 0
      ? {
          availability: availabilityShown({
            betweenStops: running / stops,
            clearing: stood / stops,
            duration: seconds,
            confidence,
          }).lower,
        }
      : {}),
  };
};
