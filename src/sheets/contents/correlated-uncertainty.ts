import type { Problem } from '../../quantity/problem.ts';
import { listField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { guideCorrelated } from './fill-sources.ts';

interface CorrelatedInputs {
  readonly contributions: readonly number[];
  readonly correlations: readonly number[];
}

interface CorrelatedOutputs {
  readonly combined: number;
  readonly apart: number;
}

/** Variance with all that ties the parts; the pairs stand as 12, 13, …, 23, … */
const varianceOf = ({ contributions, correlations }: CorrelatedInputs): number => {
  let sum = 0;
  let pair = 0;
  contributions.forEach((one, i) => {
    sum += one * one;
    for (let j = i + 1; j < contributions.length; j++) {
      sum += 2 * one * contributions[j]! * correlations[pair++]!;
    }
  });
  return sum;
};

/**
 * Combined uncertainty of a volume whose contributions hang together, such as two weighings on one balance.
 *
 * Method   u^2 = sum u_i^2 + 2 sum u_i u_j r_ij
 * Symbols  contributions  u_i   m3, sensitivity times standard uncertainty, with the sign of the sensitivity
 *          correlations   r_ij  of each pair, in the order 12, 13, …, 23, …
 * Returns  u, and what it would be if nothing tied them
 * Assumes  first order
 * Cost     O(n^2)
 * Source   JCGM 100:2008, 5.2.2
 */
export const correlatedUncertainty = (i: CorrelatedInputs): CorrelatedOutputs => ({
  combined: Math.sqrt(Math.max(0, varianceOf(i))),
  apart: Math.hypot(...i.contributions),
});

// what rounding leaves of two parts that cancel
const hair = 1e-9;

const wrong = (i: CorrelatedInputs): readonly Problem[] => {
  const { contributions, correlations } = i;
  const pairs = (contributions.length * (contributions.length - 1)) / 2;
  if (correlations.length !== pairs) {
    return [
      { code: 'CORRELATIONS_COUNT', path: 'correlations', given: correlations.length, allowed: `${pairs}` },
    ];
  }
  return varianceOf(i) < -hair * Math.hypot(...contributions) ** 2
    ? [{ code: 'CORRELATIONS_IMPOSSIBLE', path: 'correlations' }]
    : [];
};

export const correlatedUncertaintySheet = defineSheet<CorrelatedInputs, CorrelatedOutputs>({
  id: 'contents/correlated-uncertainty',
  version: 1,
  inputs: {
    contributions: weighedList('volume', 'u_i', { least: -1e-2, most: 1e-2, fewest: 2 }),
    correlations: listField('ratio', 'r_{ij}', { least: -1, most: 1 }),
  },
  outputs: {
    combined: weighedField('volume', 'u'),
    apart: weighedField('volume', '\\sqrt{\\textstyle\\sum u_i^2}'),
  },
  formula: ['u = \\sqrt{\\textstyle\\sum u_i^2 + 2 \\sum_{i<j} u_i u_j r_{ij}}'],
  limits: [],
  sources: [guideCorrelated],
  check: wrong,
  compute: correlatedUncertainty,
});
