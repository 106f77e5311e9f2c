import { studentQuantile } from '../../statistics/student.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { leastWhole } from './least-whole.ts';
import { assumedConfidence, figures, trialSizes } from './trial-bounds.ts';
import { statisticsTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface RunsWantedInputs {
  readonly mean: number;
  readonly spread: number;
  readonly runs: number;
  readonly relative: number;
  readonly confidence: number;
}

interface RunsWanted {
  readonly halfWidth: number;
  readonly firstGuess: number;
  readonly wanted: number;
}

/**
 * Runs that narrow the interval of a mean to a share of it, judged by a first few.
 *
 * Method   h = gamma |xbar|/(1 + gamma);  first guess ceil((t(m0 - 1) s/h)^2);
 *          least m >= 2 with t(m - 1) s/sqrt m <= h
 * Symbols  xbar   mean        scalar         of the first runs, not 0
 *          s      spread      scalar         of them, >= 0
 *          m0     runs        count          >= 2
 *          gamma  relative    ratio          half width over the true mean
 *          P      confidence  scalar         two-sided
 * Returns  half width to reach; runs by the t of the first few; runs by their own t
 * Assumes  the spread of the first few is that of all
 * Cost     some twenty quantiles
 * Source   A. M. Law, Simulation Modeling and Analysis, 9.4.1 (memory)
 */
export const runsWanted = ({ mean, spread, runs, relative, confidence }: RunsWantedInputs): RunsWanted => {
  const halfWidth = (relative * Math.abs(mean)) / (1 + relative);
  const share = 0.5 * (1 + confidence);
  const widthOf = (m: number, by: number): number => (studentQuantile(share, by - 1) * spread) / Math.sqrt(m);
  return {
    halfWidth,
    firstGuess: Math.ceil((widthOf(1, runs) / halfWidth) ** 2),
    wanted: leastWhole((m) => widthOf(m, m) <= halfWidth, 2),
  };
};

/** A mean this small beside its spread can't be shown to a share of itself. */
const leastShare = 1e-4;

export const runsWantedSheet = defineSheet<RunsWantedInputs, RunsWanted>({
  id: 'rate/runs-wanted',
  version: 1,
  inputs: {
    mean: numberField('count', '\\bar x', figures),
    spread: numberField('count', 's', { least: 0, most: figures.most }),
    runs: numberField('count', 'm_0', { ...trialSizes, least: 2 }),
    relative: numberField('ratio', '\\gamma', { least: 1e-4, most: 1, assumed: 0.05 }),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    halfWidth: numberField('count', 'h'),
    firstGuess: numberField('count', 'm_1'),
    wanted: numberField('count', 'm'),
  },
  formula: [
    'h = \\frac{\\gamma\\, |\\bar x|}{1 + \\gamma}, \\quad m_1 = \\left\\lceil \\left( t_{(1+P)/2,\\, m_0-1} \\frac{s}{h} \\right)^2 \\right\\rceil',
    'm = \\min \\left\\{ m \\ge 2 : t_{(1+P)/2,\\, m-1} \\frac{s}{\\sqrt m} \\le h \\right\\}',
  ],
  limits: [{ code: 'RUNS_SPREAD_UNSURE', broken: ({ runs }) => runs < 10 }],
  sources: [statisticsTheory],
  check: ({ mean, spread, runs }) => [
    ...wholeProblems({ runs }),
    ...(Math.abs(mean) > leastShare * spread
      ? []
      : [{ code: 'RUNS_MEAN_NEAR_NONE', path: 'mean', given: mean, allowed: `> ${leastShare * spread}` }]),
  ],
  compute: runsWanted,
});
