import type { Problem } from '../../quantity/problem.ts';
import { betaPoint } from '../../statistics/beta.ts';
import { binomialCdf } from '../../statistics/binomial.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { hits, partShares, trialSizes } from './trial-bounds.ts';
import { binomialTheory } from './trial-sources.ts';
import { wholeProblems } from './whole.ts';

interface PlanInputs {
  readonly looked: number;
  readonly accepted: number;
  readonly share: number;
}

interface Plan {
  readonly chance: number;
  readonly mostlyAccepted: number;
  readonly evenly: number;
  readonly mostlyRefused: number;
}

/** Share of bad ones at which a plan accepts with a given chance. */
const shareAccepted = (looked: number, accepted: number, chance: number): number =>
  betaPoint({ lower: 1 - chance, upper: chance }, accepted + 1, looked - accepted);

/**
 * What a plan of acceptance by count lets through.
 *
 * Method   P_a(p) = P(Bin(n, p) <= Ac);  p at a chance: beta quantile B(1 - P_a; Ac + 1, n - Ac)
 * Symbols  n   looked    count   whole, bottles looked at
 *          Ac  accepted  count   whole, < n, bad ones with which the lot is still accepted
 *          p   share     ratio   of bad ones in the lot
 * Returns  chance of acceptance at p; shares accepted in 95, 50 and 10 of 100
 * Assumes  a lot large beside the sample
 * Cost     O(sqrt n)
 * Source   binomial distribution; operating characteristic
 */
export const acceptancePlan = ({ looked, accepted, share }: PlanInputs): Plan => ({
  chance: binomialCdf(accepted, looked, share),
  mostlyAccepted: shareAccepted(looked, accepted, 0.95),
  evenly: shareAccepted(looked, accepted, 0.5),
  mostlyRefused: shareAccepted(looked, accepted, 0.1),
});

const problemsOf = ({ looked, accepted }: PlanInputs): readonly Problem[] => [
  ...wholeProblems({ looked, accepted }),
  // with as many allowed as are looked at, every lot passes
  ...(accepted < looked
    ? []
    : [{ code: 'PLAN_REFUSES_NONE', path: 'accepted', given: accepted, allowed: `< ${looked}` }]),
];

export const acceptancePlanSheet = defineSheet<PlanInputs, Plan>({
  id: 'rate/acceptance-plan',
  version: 1,
  inputs: {
    looked: numberField('count', 'n', trialSizes),
    accepted: numberField('count', '\\mathit{Ac}', hits),
    share: numberField('ratio', 'p', partShares),
  },
  outputs: {
    chance: numberField('ratio', 'P_a'),
    mostlyAccepted: numberField('ratio', 'p_{95}'),
    evenly: numberField('ratio', 'p_{50}'),
    mostlyRefused: numberField('ratio', 'p_{10}'),
  },
  formula: [
    'P_a(p) = \\sum_{k=0}^{\\mathit{Ac}} \\binom{n}{k} p^k (1 - p)^{n-k}, \\quad p_{100 P_a} = B^{-1}(1 - P_a;\\, \\mathit{Ac} + 1,\\, n - \\mathit{Ac})',
  ],
  limits: [{ code: 'PLAN_ONE_LOT', broken: () => true }],
  sources: [binomialTheory],
  check: problemsOf,
  compute: acceptancePlan,
});
