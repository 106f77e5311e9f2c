import type { Problem } from '../../quantity/problem.ts';
import { chiSquaredPoint } from '../../statistics/chi-squared.ts';
import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { assumedConfidence, fewStops, stopTimes } from './trial-bounds.ts';
import { stopsTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

/** What ended the trial: its time was up, or its last stop. */
export const trialEnds = ['time', 'stop'] as const;
export type TrialEnd = (typeof trialEnds)[number];

interface ShownInputs {
  readonly running: number;
  readonly stops: number;
  readonly endedBy: TrialEnd;
  readonly confidence: number;
}

/**
 * Running times that a mean time between stops must be divided by for its lower bound: half of chi-squared.
 *
 * Method   x = chi2(P; 2k + 2)/2 where the time ended the trial, chi2(P; 2k)/2 where a stop did
 * Symbols  k  stops       count   whole, >= 0
 *          P  confidence  scalar  one-sided
 * Returns  x
 * Source   Poisson distribution of the stops
 */
export const stopsFactor = (stops: number, endedBy: TrialEnd, confidence: number): number =>
  0.5 *
  chiSquaredPoint(
    { lower: confidence, upper: 1 - confidence },
    endedBy === 'time' ? 2 * stops + 2 : 2 * stops,
  );

/** Stops that are no whole number, or a last stop that ended the trial and is not among them. */
export const stopsProblems = (stops: number, endedBy: TrialEnd): readonly Problem[] => [
  ...wholeProblems({ stops }),
  ...(endedBy === 'stop' && stops < 1
    ? [{ code: 'STOP_ENDED_NONE', path: 'stops', given: stops, allowed: '>= 1' }]
    : []),
];

/**
 * Mean time between stops that a trial shows.
 *
 * Method   T/x
 * Symbols  T  running  scalar  s   > 0, time that the line ran
 *          x  of `stopsFactor`
 * Returns  lower bound, s
 * Assumes  stops come at one rate all the time
 * Cost     O(1)
 * Source   NIST/SEMATECH e-Handbook 8.4.5.1
 */
export const meanTimeShown = ({ running, stops, endedBy, confidence }: ShownInputs): number =>
  running / stopsFactor(stops, endedBy, confidence);

export const meanTimeShownSheet = defineSheet({
  id: 'rate/mean-time-shown',
  version: 1,
  inputs: {
    running: numberField('time', 'T', stopTimes),
    stops: numberField('count', 'k', fewStops),
    endedBy: choiceField<TrialEnd>('\\text{end}', trialEnds, 'time'),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: { factor: numberField('ratio', 'x', { digits: 5 }), shown: numberField('time', 'M_-') },
  formula: [
    'M_- = \\frac{T}{x}, \\quad x = \\tfrac{1}{2} \\chi^2_{P,\\, 2k+2} \\ \\text{(time)}, \\quad x = \\tfrac{1}{2} \\chi^2_{P,\\, 2k} \\ \\text{(stop)}',
  ],
  limits: [{ code: 'STOPS_STEADY', broken: () => true }],
  sources: [stopsTheory],
  check: ({ stops, endedBy }) => stopsProblems(stops, endedBy),
  compute: (i: ShownInputs) => ({
    factor: stopsFactor(i.stops, i.endedBy, i.confidence),
    shown: meanTimeShown(i),
  }),
});
