import type { ShiftFigures } from '../../line/shift/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { availabilityFromStopsSheet } from '../../sheets/rate/availability-from-stops.ts';
import { meanOfRunSheet } from '../../sheets/rate/mean-of-run.ts';
import { meanTimeShownSheet } from '../../sheets/rate/mean-time-shown.ts';
import { runToShowAvailabilitySheet } from '../../sheets/rate/run-to-show-availability.ts';
import { runToShowMeanTimeSheet } from '../../sheets/rate/run-to-show-mean-time.ts';
import type { Tracer } from '../tracer.ts';
import type { BoundShift } from './bound-shift.ts';

/** A run with so many allowed stops. */
export interface AllowedRun {
  readonly allowed: number;
  /** s of running that it takes, and the same with what such stops stand */
  readonly running: number;
  readonly length: number;
  /** Chance with which this line passes. */
  readonly passing: number;
  readonly working: number;
}

export interface ProofPlan {
  /** Whether the line makes the agreed rate at all while nothing stops; absent where either is unknown. */
  readonly rateReached?: boolean;
  /** All stops as one: s running between two, s of one. */
  readonly between: number;
  readonly clear: number;
  readonly efficiency: number;
  readonly confidence: number;
  /** Mean time between stops that the agreed efficiency asks for, s. */
  readonly agreedBetween: number;
  readonly runs: readonly AllowedRun[];
  /** Most stops that the agreed run may have and still show it; absent where it is too short for any. */
  readonly inAgreedRun?: number;
  /** Length by which the share of time running is shown, s; or why none shows it. */
  readonly byTime?: { readonly length: number; readonly stops: number; readonly working: number };
  readonly never?: readonly Problem[];
}

/** Runs with more stops are longer than anybody waits. */
const mostAllowed = 6;

/** All stops of a line as one, as they are felt where its minutes are counted. */
const stopsAsOne = ({ causes }: ShiftFigures, duration: number) => {
  const stops = causes.reduce((sum, { strikes }) => sum + strikes.mean, 0);
  const lost = causes.reduce((sum, cause) => sum + cause.lost.mean, 0);
  return stops > 0 && lost > 0 && lost < duration
    ? { between: (duration - lost) / stops, clear: lost / stops }
    : undefined;
};

/**
 * How long a run must be, and how many stops it may have, to show the agreed efficiency.
 *
 * Method   stops of the simulated shifts as one kind; A0 = M/(M + D) gives the mean time M that must be shown; run lengths by
 *          allowed stops, and by the share of time running
 * Returns  undefined where nothing was agreed or nothing ever stops
 * Assumes  stops come like chance events at one rate; all take the same mean time
 */
export const proofPlan = (
  tracer: Tracer,
  bound: BoundShift,
  figures: ShiftFigures,
): ProofPlan | undefined => {
  const { agreedEfficiency: efficiency, confidence, agreedRun, agreedRate, runningRate } = bound;
  const stops = stopsAsOne(figures, bound.duration);
  if (efficiency === undefined || stops === undefined || !(efficiency > 0 && efficiency < 1))
    return undefined;
  const { between, clear } = stops;
  const agreedBetween = (efficiency * clear) / (1 - efficiency);
  const runs = Array.from({ length: mostAllowed + 1 }, (_, allowed): AllowedRun | undefined => {
    const working = tracer.trace(runToShowMeanTimeSheet, {
      agreed: { value: agreedBetween },
      allowed: { value: allowed },
      confidence: { value: confidence, from: { path: '/agreement/confidence' } },
      expected: { value: between },
    });
    const running = tracer.output(working, 'running');
    const passing = tracer.output(working, 'passing');
    if (working === undefined || running === undefined || passing === undefined) return undefined;
    return { allowed, running, length: running + allowed * clear, passing, working };
  }).filter((run) => run !== undefined);
  const inAgreedRun = runs.findLast(({ length }) => length <= agreedRun)?.allowed;
  const byTime = tracer.keep(
    runToShowAvailabilitySheet,
    { betweenStops: between, clearing: clear, agreed: efficiency, confidence, passing: 0.9 },
    () => ({ confidence: { path: '/agreement/confidence' } }),
  );
  return {
    between,
    clear,
    efficiency,
    confidence,
    agreedBetween,
    runs,
    ...(runningRate === undefined || agreedRate === undefined
      ? {}
      : { rateReached: runningRate >= agreedRate * (1 - 1e-9) }),
    ...(inAgreedRun === undefined ? {} : { inAgreedRun }),
    ...(byTime.ok
      ? {
          byTime: {
            length: tracer.output(byTime.value.working, 'duration')!,
            stops: tracer.output(byTime.value.working, 'stops')!,
            working: byTime.value.working,
          },
        }
      : { never: byTime.problems }),
  };
};

/** A run that took place. */
export interface RunMade {
  /** s, stops and all, and s that it stood */
  readonly seconds: number;
  readonly stood: number;
  readonly good: number;
  readonly stops: number;
}

export interface RunShown {
  /** Good bottles a second, and the working. */
  readonly rate: { readonly value: number; readonly working?: number };
  /** s between stops, lower bound. */
  readonly between?: { readonly value: number; readonly working?: number };
  /** Share of time running, lower bound; absent where nothing stopped. */
  readonly availability?: { readonly value: number; readonly working?: number };
}

/** What a run shows at least, with one-sided confidence. */
export const runShown = (tracer: Tracer, run: RunMade, confidence: number): RunShown => {
  const running = run.seconds - run.stood;
  const at = { value: confidence, from: { path: '/agreement/confidence' } } as const;
  const rate = tracer.trace(meanOfRunSheet, {
    bottles: { value: run.good },
    duration: { value: run.seconds },
  });
  const between = tracer.trace(meanTimeShownSheet, {
    running: { value: running },
    stops: { value: run.stops },
    endedBy: { value: 'time' },
    confidence: at,
  });
  const availability =
    run.stops > 0 && run.stood > 0
      ? tracer.trace(availabilityFromStopsSheet, {
          running: { value: running },
          stopped: { value: run.stood },
          stops: { value: run.stops },
          confidence: at,
        })
      : undefined;
  const bound = (working: number | undefined, output: string) => {
    const value = tracer.output(working, output);
    return value === undefined || working === undefined ? undefined : { value, working };
  };
  const shownBetween = bound(between, 'shown');
  const shownAvailability = bound(availability, 'lower');
  return {
    rate: bound(rate, 'rate') ?? { value: run.good / run.seconds },
    ...(shownBetween === undefined ? {} : { between: shownBetween }),
    ...(shownAvailability === undefined ? {} : { availability: shownAvailability }),
  };
};
