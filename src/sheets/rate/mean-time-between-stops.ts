import { chiSquaredPoint } from '../../statistics/chi-squared.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { stopsFactor, stopsProblems, type TrialEnd, trialEnds } from './mean-time-shown.ts';
import { assumedConfidence, fewStops, stopTimes } from './trial-bounds.ts';
import { stopsTheory } from './trial-sources.ts';

interface BetweenInputs {
  readonly running: number;
  readonly stops: number;
  readonly endedBy: TrialEnd;
  readonly confidence: number;
}

interface Between {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Mean time between stops, with its two-sided limits.
 *
 * Method   T/k;  2T/chi2((1 + P)/2; 2k + 2) (2k where a stop ended the trial) to 2T/chi2((1 - P)/2; 2k)
 * Symbols  T  running     scalar  s    > 0, time that the line ran
 *          k  stops       count        whole, >= 1; of none there is no mean and no upper limit
 *          P  confidence  scalar       two-sided
 * Returns  mean and limits, s
 * Assumes  stops come at one rate all the time
 * Cost     O(1)
 * Source   NIST/SEMATECH e-Handbook 8.4.5.1
 */
export const meanTimeBetweenStops = ({ running, stops, endedBy, confidence }: BetweenInputs): Between => {
  const tail = 0.5 * (1 - confidence);
  return {
    mean: running / stops,
    low: running / stopsFactor(stops, endedBy, 1 - tail),
    high: (2 * running) / chiSquaredPoint({ lower: tail, upper: 1 - tail }, 2 * stops),
  };
};

export const meanTimeBetweenStopsSheet = defineSheet<BetweenInputs, Between>({
  id: 'rate/mean-time-between-stops',
  version: 1,
  inputs: {
    running: numberField('time', 'T', stopTimes),
    stops: numberField('count', 'k', { ...fewStops, least: 1 }),
    endedBy: choiceField<TrialEnd>('\\text{end}', trialEnds, 'time'),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    mean: numberField('time', 'M'),
    low: numberField('time', 'M_L'),
    high: numberField('time', 'M_U'),
  },
  formula: [
    'M = \\frac{T}{k}, \\quad M_U = \\frac{2 T}{\\chi^2_{(1-P)/2,\\, 2k}}',
    'M_L = \\frac{2 T}{\\chi^2_{(1+P)/2,\\, 2k+2}} \\ \\text{(time)}, \\quad M_L = \\frac{2 T}{\\chi^2_{(1+P)/2,\\, 2k}} \\ \\text{(stop)}',
  ],
  limits: [{ code: 'STOPS_STEADY', broken: () => true }],
  sources: [stopsTheory],
  check: ({ stops, endedBy }) => stopsProblems(stops, endedBy),
  compute: meanTimeBetweenStops,
});
