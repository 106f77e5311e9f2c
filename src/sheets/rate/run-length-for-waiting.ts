import { normalQuantile } from '../../statistics/normal.ts';
import { numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { ratesAboveZero } from './bounds.ts';
import { assumedConfidence } from './trial-bounds.ts';

interface RunLengthInputs {
  readonly arrivals: number;
  readonly pace: number;
  readonly relative: number;
  readonly confidence: number;
}

interface RunLength {
  readonly present: number;
  readonly variance: number;
  readonly length: number;
}

/**
 * How long bottles before a station must be watched until their mean number is known to a share of it.
 *
 * Method   L = rho/(1 - rho);  sigma^2 = 2 rho (1 + rho)/((1 - rho)^4 mu);  T = (z sigma/(gamma L))^2
 * Symbols  lambda  arrivals    scalar  1/s    > 0, < mu; rho = lambda/mu
 *          mu      pace        scalar  1/s    > 0
 *          gamma   relative    ratio          half width over the mean
 *          P       confidence  scalar         two-sided
 * Returns  mean number present; variance of a mean over time T, times T, s; length T, s
 * Assumes  bottles at random, times that vary like the gaps between chance events; a run long beside its memory
 * Cost     O(1)
 * Source   asymptotic variance of the number present
 */
export const runLengthForWaiting = ({ arrivals, pace, relative, confidence }: RunLengthInputs): RunLength => {
  const load = arrivals / pace;
  // of its digits 1 - rho keeps more as a difference of the rates
  const spare = (pace - arrivals) / pace;
  const present = load / spare;
  const variance = (2 * load * (1 + load)) / (spare ** 4 * pace);
  const z = normalQuantile(0.5 * (1 + confidence));
  return { present, variance, length: (z * z * variance) / (relative * present) ** 2 };
};

const asymptotic: Source = {
  title: 'asymptotic variance of the number in a queue',
  place: 'formula recalled; agrees with the sum over the birth and death chain, at loads of 0.5, 0.7 and 0.9',
  mark: 'computed',
};

export const runLengthForWaitingSheet = defineSheet<RunLengthInputs, RunLength>({
  id: 'rate/run-length-for-waiting',
  version: 1,
  inputs: {
    arrivals: numberField('rate', '\\lambda', ratesAboveZero),
    pace: numberField('rate', '\\mu', ratesAboveZero),
    relative: numberField('ratio', '\\gamma', { least: 1e-4, most: 1, assumed: 0.05 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    present: numberField('count', 'L'),
    variance: numberField('time', '\\sigma^2'),
    length: numberField('time', 'T'),
  },
  formula: [
    '\\rho = \\frac{\\lambda}{\\mu}, \\quad L = \\frac{\\rho}{1 - \\rho}, \\quad \\sigma^2 = \\frac{2 \\rho (1 + \\rho)}{(1 - \\rho)^4\\, \\mu}',
    'T = \\left( \\frac{z_{(1+P)/2}\\, \\sigma}{\\gamma L} \\right)^2',
  ],
  limits: [{ code: 'WAIT_RUN_SETTLED', broken: () => true }],
  sources: [asymptotic],
  check: ({ arrivals, pace }) =>
    arrivals < pace ? [] : [{ code: 'WAIT_GROWS', path: 'arrivals', given: arrivals, allowed: `< ${pace}` }],
  compute: runLengthForWaiting,
});
