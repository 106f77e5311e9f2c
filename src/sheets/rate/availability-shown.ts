import { normalQuantile } from '../../statistics/normal.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { assumedConfidence, stopTimes } from './trial-bounds.ts';
import { renewal } from './trial-sources.ts';

interface AvailabilityInputs {
  readonly betweenStops: number;
  readonly clearing: number;
  readonly duration: number;
  readonly confidence: number;
}

interface Availability {
  readonly availability: number;
  readonly spread: number;
  readonly lower: number;
}

/** Variance of the share of time running over a long time, times that time, s. */
export const availabilityVariance = (betweenStops: number, clearing: number): number => {
  const cycle = betweenStops + clearing;
  const up = betweenStops / cycle;
  const down = clearing / cycle;
  return 2 * up * up * down * down * cycle;
};

/**
 * Availability of a line with stops at random, and how far a run of some length may show another one.
 *
 * Method   A = U/(U + D);  s^2 = 2 U^2 D^2/((U + D)^3 T);  A - z s
 * Symbols  U  betweenStops  scalar  s   > 0, mean running time between stops
 *          D  clearing      scalar  s   > 0, mean time of a stop
 *          T  duration      scalar  s   > 0, of the run, stops and all
 *          P  confidence    scalar      one-sided
 * Returns  availability; standard deviation of what a run shows; lower bound, not below nought
 * Assumes  times vary like the gaps between chance events; many stops in the run
 * Cost     O(1)
 * Source   alternating renewal process
 */
export const availabilityShown = (i: AvailabilityInputs): Availability => {
  const availability = i.betweenStops / (i.betweenStops + i.clearing);
  const spread = Math.sqrt(availabilityVariance(i.betweenStops, i.clearing) / i.duration);
  return {
    availability,
    spread,
    lower: Math.max(0, availability - normalQuantile(i.confidence) * spread),
  };
};

/** Stops under which the normal law is too crude for the bound. */
const fewStopsExpected = 10;

export const availabilityShownSheet = defineSheet<AvailabilityInputs, Availability>({
  id: 'rate/availability-shown',
  version: 1,
  inputs: {
    betweenStops: numberField('time', 'U', stopTimes),
    clearing: numberField('time', 'D', stopTimes),
    duration: numberField('time', 'T', stopTimes),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    availability: numberField('ratio', 'A'),
    spread: numberField('ratio', 's'),
    lower: numberField('ratio', 'A_-'),
  },
  formula: [
    'A = \\frac{U}{U + D}, \\quad s = \\sqrt{\\frac{2\\, U^2 D^2}{(U + D)^3\\, T}}, \\quad A_- = \\max(0,\\, A - z_P\\, s)',
  ],
  limits: [
    {
      code: 'AVAILABILITY_NORMAL',
      broken: ({ betweenStops, clearing, duration }) =>
        duration < fewStopsExpected * (betweenStops + clearing),
    },
  ],
  sources: [renewal],
  compute: availabilityShown,
});
