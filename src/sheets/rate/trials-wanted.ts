import { binomialCdf } from '../../statistics/binomial.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { leastWhole } from './least-whole.ts';
import { assumedConfidence, fewStops, partShares } from './trial-bounds.ts';
import { binomialTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface TrialsInputs {
  readonly share: number;
  readonly allowed: number;
  readonly confidence: number;
}

/**
 * Bottles, rows or cycles that must be tried so that few enough bad ones show a share.
 *
 * Method   least n with P(Bin(n, p0) <= c) <= 1 - P;  c = 0: ln(1 - P)/ln(1 - p0)
 * Symbols  p0  share       scalar   of bad ones that is to be ruled out
 *          c   allowed     count    whole, >= 0, bad ones that the trial may have
 *          P   confidence  scalar   one-sided
 * Returns  n
 * Assumes  each trial for itself, with one chance all the time
 * Cost     some twenty binomial shares
 * Source   binomial distribution
 */
export const trialsWanted = ({ share, allowed, confidence }: TrialsInputs): number =>
  leastWhole((n) => binomialCdf(allowed, n, share) <= 1 - confidence, allowed + 1);

export const trialsWantedSheet = defineSheet({
  id: 'rate/trials-wanted',
  version: 1,
  inputs: {
    share: numberField('ratio', 'p_0', partShares),
    allowed: numberField('count', 'c', fewStops),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: { trials: numberField('count', 'n') },
  formula: [
    'n = \\min \\left\\{ n : \\sum_{k=0}^{c} \\binom{n}{k} p_0^k (1 - p_0)^{n-k} \\le 1 - P \\right\\}',
  ],
  limits: [{ code: 'TRIALS_FIXED_BEFORE', broken: () => true }],
  sources: [binomialTheory],
  check: ({ allowed }) => wholeProblems({ allowed }),
  compute: (i: TrialsInputs) => ({ trials: trialsWanted(i) }),
});
