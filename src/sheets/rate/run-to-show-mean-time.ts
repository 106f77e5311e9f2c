import { chiSquaredTails } from '../../statistics/chi-squared.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { stopsFactor } from './mean-time-shown.ts';
import { assumedConfidence, fewStops, stopTimes } from './trial-bounds.ts';
import { stopsTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface RunToShowInputs {
  readonly agreed: number;
  readonly allowed: number;
  readonly confidence: number;
  readonly expected: number;
}

interface RunToShow {
  readonly running: number;
  readonly passing: number;
}

/**
 * Running time of a trial that shows a mean time between stops if it has few enough, and the chance that it passes.
 *
 * Method   T = M chi2(P; 2c + 2)/2;  chance = P(Poisson(T/M') <= c)
 * Symbols  M   agreed      scalar  s    > 0, mean time between stops to be shown
 *          c   allowed     count        whole, >= 0, stops that the trial may have
 *          P   confidence  scalar       one-sided
 *          M'  expected    scalar  s    > 0, mean time that the line is thought to have
 * Returns  running time, s; chance that the trial passes
 * Assumes  stops come at one rate all the time; the clock stands while the line does
 * Cost     O(1)
 * Source   Poisson distribution of the stops
 */
export const runToShowMeanTime = ({ agreed, allowed, confidence, expected }: RunToShowInputs): RunToShow => {
  const running = agreed * stopsFactor(allowed, 'time', confidence);
  return { running, passing: chiSquaredTails((2 * running) / expected, 2 * allowed + 2).upper };
};

export const runToShowMeanTimeSheet = defineSheet<RunToShowInputs, RunToShow>({
  id: 'rate/run-to-show-mean-time',
  version: 1,
  inputs: {
    agreed: numberField('time', 'M', stopTimes),
    allowed: numberField('count', 'c', fewStops),
    confidence: numberField('ratio', 'P', assumedConfidence),
    expected: numberField('time', "M'", stopTimes),
  },
  outputs: { running: numberField('time', 'T'), passing: numberField('ratio', '\\beta') },
  formula: [
    "T = \\tfrac{1}{2} \\chi^2_{P,\\, 2c+2}\\, M, \\quad \\beta = \\sum_{k=0}^{c} \\frac{(T/M')^k}{k!} e^{-T/M'}",
  ],
  limits: [
    { code: 'STOPS_STEADY', broken: () => true },
    { code: 'RUN_LIKELY_FAILS', broken: (_, { passing }) => passing < 0.5 },
  ],
  sources: [stopsTheory],
  check: ({ allowed }) => wholeProblems({ allowed }),
  compute: runToShowMeanTime,
});
