import type { Problem } from '../../quantity/problem.ts';
import { noncentralTCdf } from '../../statistics/noncentral-t.ts';
import { normalCdf } from '../../statistics/normal.ts';
import { brentRoot } from '../brent-root.ts';
import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { fillVolumes, sampleSizes, spreads } from './fill-bounds.ts';
import { handbook, presetTheory } from './fill-sources.ts';

interface LowerCapabilityInputs {
  readonly lowest: number;
  readonly mean: number;
  readonly spread: number;
  readonly bottles: number;
  readonly confidence: number;
}

interface LowerCapabilityOutputs {
  readonly capability: number;
  readonly bound: number;
  readonly shareBelow: number;
  readonly shareBound: number;
}

const indexOf = ({ lowest, mean, spread }: LowerCapabilityInputs): number => (mean - lowest) / (3 * spread);

/** A fill so many times its own spread over the limit is a slip of a unit. */
const highestIndex = 100;

const indexProblems = (i: LowerCapabilityInputs): readonly Problem[] => {
  const index = indexOf(i);
  return Math.abs(index) <= highestIndex
    ? []
    : [{ code: 'CAPABILITY_TOO_GREAT', path: 'spread', given: index, allowed: `${highestIndex}` }];
};

/**
 * Capability of a fill over its one limit, with its lower confidence bound.
 *
 * Method   3 sqrt(n) C is noncentral t of n - 1 degrees about 3 sqrt(n) times the true index; the bound is the
 *          true index at which so great a C would be seen with a chance of 1 - confidence
 * Symbols  lowest        L        m3, Q - T or what the level asks
 *          mean, spread  xbar, s  m3
 *          bottles       n
 *          confidence    P        one-sided
 * Returns  index, its bound, share of a normal fill below the limit by either
 * Assumes  normal contents; a settled process
 * Cost     some ten shares of the noncentral t
 * Source   derived; the same distribution as the one-sided tolerance factor
 */
const lowerCapability = (i: LowerCapabilityInputs): LowerCapabilityOutputs => {
  const index = indexOf(i);
  const scale = 3 * Math.sqrt(i.bottles);
  const dof = i.bottles - 1;
  const seen = index * scale;
  // ten times the doubt of mean and standard deviation on either side of what was seen
  const reach = 10 * (1 + Math.abs(seen));
  const delta = brentRoot(
    (d) => noncentralTCdf(seen, dof, d) - i.confidence,
    seen - reach,
    seen + reach,
    1e-12,
  );
  const bound = delta / scale;
  return {
    capability: index,
    bound,
    shareBelow: normalCdf(-3 * index),
    shareBound: normalCdf(-3 * bound),
  };
};

export const capabilityLowerSheet = defineSheet<LowerCapabilityInputs, LowerCapabilityOutputs>({
  id: 'contents/capability-lower',
  version: 1,
  inputs: {
    lowest: weighedField('volume', 'L', fillVolumes),
    mean: weighedField('volume', '\\bar x', fillVolumes),
    spread: weighedField('volume', 's', spreads),
    bottles: numberField('count', 'n', sampleSizes),
    confidence: numberField('ratio', 'P', { least: 0.5, most: 0.9999, assumed: 0.95 }),
  },
  outputs: {
    capability: numberField('ratio', 'C_{pl}'),
    bound: numberField('ratio', 'C_-'),
    shareBelow: numberField('ratio', 'p'),
    shareBound: numberField('ratio', 'p_+'),
  },
  formula: [
    'C_{pl} = \\frac{\\bar x - L}{3 s}, \\quad T_{n-1;\\, 3 \\sqrt n\\, C_-}(3 \\sqrt n\\, C_{pl}) = P',
    'p = \\Phi(-3 C_{pl}), \\quad p_+ = \\Phi(-3 C_-)',
  ],
  limits: [
    { code: 'CAPABILITY_FEW', broken: ({ bottles }) => bottles < 30 },
    { code: 'CAPABILITY_OUTSIDE', broken: (_, { capability }) => capability < 0 },
  ],
  sources: [presetTheory, handbook('6.1.6')],
  check: indexProblems,
  compute: lowerCapability,
});
