import { fPoint } from '../../statistics/f-distribution.ts';
import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { assumedConfidence, fewStops, stopTimes } from './trial-bounds.ts';
import { wholeProblems } from './whole.ts';

interface FromStopsInputs {
  readonly running: number;
  readonly stopped: number;
  readonly stops: number;
  readonly confidence: number;
}

interface FromStops {
  readonly availability: number;
  readonly factor: number;
  readonly lower: number;
}

/**
 * Availability that the stops of a run show; exact.
 *
 * Method   A = U/(U + D);  1/(1 + D/U F(P; 2k, 2k))
 * Symbols  U  running     scalar  s   > 0, all running times together
 *          D  stopped     scalar  s   > 0, all stops together
 *          k  stops       count       whole, >= 1, each with the running time before it
 *          P  confidence  scalar      one-sided
 * Returns  share of time running; F; lower bound
 * Assumes  both times vary like the gaps between chance events; the run begins and ends with a cleared stop
 * Cost     O(1)
 * Source   ratio of two gamma variables
 */
export const availabilityFromStops = ({
  running,
  stopped,
  stops,
  confidence,
}: FromStopsInputs): FromStops => {
  const factor = fPoint({ lower: confidence, upper: 1 - confidence }, 2 * stops, 2 * stops);
  return {
    availability: running / (running + stopped),
    factor,
    lower: running / (running + stopped * factor),
  };
};

const gammaRatio: Source = {
  title: 'F distribution of the ratio of two means of k exponential times',
  place: 'derived',
  mark: 'computed',
};

export const availabilityFromStopsSheet = defineSheet<FromStopsInputs, FromStops>({
  id: 'rate/availability-from-stops',
  version: 1,
  inputs: {
    running: numberField('time', 'U', stopTimes),
    stopped: numberField('time', 'D', stopTimes),
    stops: numberField('count', 'k', { ...fewStops, least: 1 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    availability: numberField('ratio', 'A'),
    factor: numberField('ratio', 'F'),
    lower: numberField('ratio', 'A_-'),
  },
  formula: [
    'A = \\frac{U}{U + D}, \\quad A_- = \\frac{1}{1 + \\frac{D}{U} F}, \\quad F = F_{P;\\, 2k,\\, 2k}',
  ],
  limits: [
    { code: 'STOPS_STEADY', broken: () => true },
    { code: 'AVAILABILITY_CLEARED', broken: () => true },
  ],
  sources: [gammaRatio],
  check: ({ stops }) => wholeProblems({ stops }),
  compute: availabilityFromStops,
});
