import type { Problem } from '../../quantity/problem.ts';
import { betaPoint } from '../../statistics/beta.ts';
import { normalQuantile } from '../../statistics/normal.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { assumedConfidence, hits, trialSizes } from './trial-bounds.ts';
import { handbook } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface ShareInputs {
  readonly found: number;
  readonly looked: number;
  readonly confidence: number;
}

interface ShareBounds {
  readonly share: number;
  readonly least: number;
  readonly most: number;
  readonly low: number;
  readonly high: number;
  readonly scoreLow: number;
  readonly scoreHigh: number;
}

/** Exact lower bound of a share that is missed with a chance of alpha. */
export const leastShare = (found: number, looked: number, alpha: number): number =>
  found === 0 ? 0 : betaPoint({ lower: alpha, upper: 1 - alpha }, found, looked - found + 1);

/** Exact upper bound of a share that is missed with a chance of alpha. */
export const mostShare = (found: number, looked: number, alpha: number): number =>
  found === looked ? 1 : betaPoint({ lower: 1 - alpha, upper: alpha }, found + 1, looked - found);

/**
 * What k found among n looked at say of the share among all.
 *
 * Method   exact: beta quantiles, p- = B(alpha; k, n - k + 1), p+ = B(1 - alpha; k + 1, n - k);
 *          score: (p + z^2/2n -+ z sqrt(p (1 - p)/n + z^2/4n^2))/(1 + z^2/n)
 * Symbols  k  found       count   whole, 0 to n
 *          n  looked      count   whole
 *          P  confidence  scalar  alpha = 1 - P one-sided, (1 - P)/2 two-sided
 * Returns  share; exact bounds one-sided, exact limits two-sided, score limits two-sided
 * Assumes  each bottle for itself, drawn from one steady run
 * Cost     O(sqrt n)
 * Source   C. J. Clopper, E. S. Pearson; E. B. Wilson; NIST/SEMATECH e-Handbook 7.2.4.1
 */
export const shareBounds = ({ found, looked, confidence }: ShareInputs): ShareBounds => {
  const alpha = 1 - confidence;
  const share = found / looked;
  const z = normalQuantile(0.5 * (1 + confidence));
  const whole = 1 + (z * z) / looked;
  const centre = (share + (z * z) / (2 * looked)) / whole;
  const half = (z * Math.sqrt((share * (1 - share)) / looked + (z * z) / (4 * looked * looked))) / whole;
  return {
    share,
    least: leastShare(found, looked, alpha),
    most: mostShare(found, looked, alpha),
    low: leastShare(found, looked, 0.5 * alpha),
    high: mostShare(found, looked, 0.5 * alpha),
    // at the ends centre and half are equal, and their difference is rounding
    scoreLow: found === 0 ? 0 : centre - half,
    scoreHigh: found === looked ? 1 : centre + half,
  };
};

const problemsOf = ({ found, looked }: ShareInputs): readonly Problem[] => [
  ...wholeProblems({ found, looked }),
  ...(found <= looked
    ? []
    : [{ code: 'FOUND_OVER_LOOKED', path: 'found', given: found, allowed: `<= ${looked}` }]),
];

export const shareBoundsSheet = defineSheet<ShareInputs, ShareBounds>({
  id: 'rate/share-bounds',
  version: 1,
  inputs: {
    found: numberField('count', 'k', hits),
    looked: numberField('count', 'n', trialSizes),
    confidence: numberField('ratio', 'P', assumedConfidence),
  },
  outputs: {
    share: numberField('ratio', '\\hat p'),
    least: numberField('ratio', 'p_{L1}', { digits: 6 }),
    most: numberField('ratio', 'p_{U1}', { digits: 6 }),
    low: numberField('ratio', 'p_L', { digits: 6 }),
    high: numberField('ratio', 'p_U', { digits: 6 }),
    scoreLow: numberField('ratio', 'w_L', { digits: 6 }),
    scoreHigh: numberField('ratio', 'w_U', { digits: 6 }),
  },
  formula: [
    '\\hat p = \\frac{k}{n}, \\quad p_L = B^{-1}(\\alpha;\\, k,\\, n - k + 1), \\quad p_U = B^{-1}(1 - \\alpha;\\, k + 1,\\, n - k)',
    '\\alpha = 1 - P \\ \\text{(one-sided)}, \\quad \\alpha = \\tfrac{1 - P}{2} \\ \\text{(two-sided)}',
    'w = \\frac{\\hat p + \\frac{z^2}{2 n} \\mp z \\sqrt{\\frac{\\hat p (1 - \\hat p)}{n} + \\frac{z^2}{4 n^2}}}{1 + \\frac{z^2}{n}}, \\quad z = z_{(1+P)/2}',
  ],
  limits: [{ code: 'SHARE_AGREE_BOUND', broken: () => true }],
  sources: [handbook('7.2.4.1')],
  check: problemsOf,
  compute: shareBounds,
});
