import type { Problem } from '../../quantity/problem.ts';
import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { handbookPlans } from './handbook-133-constants.ts';
import { drawnProblems } from './lot-problems.ts';
import { type LotVerdict, lotVerdicts } from './lot-verdicts.ts';
import { planOfLot } from './plan-of-lot.ts';
import { handbookTable, handbookText } from './rule-sources.ts';
import { labels, liquidDensities, lotSizes, masses, someMasses, someVolumes } from './weighing-bounds.ts';

interface HandbookLotInputs {
  readonly quantity: number;
  readonly lotSize: number;
  readonly gross: readonly number[];
  readonly tares: readonly number[];
  readonly density: number;
  readonly variation: number;
}

interface HandbookLotOutputs {
  readonly verdict: LotVerdict;
  readonly sample: number;
  readonly more: number;
  readonly meanTare: number;
  readonly nominalGross: number;
  readonly meanError: number;
  readonly spread: number;
  readonly factor: number;
  readonly errorLimit: number;
  readonly worst: number;
  readonly unreasonable: number;
  readonly allowed: number;
}

// a weight that was converted to exactly the limit is a hair beside it
const hair = 1e-9;

const wrong = ({ lotSize, gross, tares }: HandbookLotInputs): readonly Problem[] => {
  const tare = univariate(tares).mean;
  const lightest = gross.findIndex((each) => !(each > tare));
  return [
    ...drawnProblems(lotSize, gross.length, 'gross'),
    ...(lightest === -1
      ? []
      : [
          {
            code: 'PACKAGE_TARE_OVER_GROSS',
            path: `gross.${lightest}`,
            given: gross[lightest]!,
            allowed: `> ${tare}`,
            parts: { number: lightest + 1 },
          },
        ]),
  ];
};

/**
 * Lot of packages labelled by volume under category A of Handbook 133, weighed with one average tare.
 *
 * Method   nominal gross = mean tare + Q rho';  e_i = (gross_i - nominal gross)/rho'
 *          fails if more errors under -MAV than allowed; else passes if mean e >= 0; else passes if |mean e| <= s SCF
 * Symbols  gross      [n]     kg, in the order drawn; the first ones of the plan count
 *          tares      [k]     kg, of the opened packages
 *          density    scalar  kg/m3, by weight in air, at the reference temperature of the product
 *          quantity   scalar  m3, Q, on the label
 *          variation  scalar  m3, MAV, typed in from the handbook's table
 * Returns  verdict with all that it rests on
 * Cost     O(n)
 * Source   NIST Handbook 133:2026, chapter 2
 */
const judgeHandbookLot = (i: HandbookLotInputs): HandbookLotOutputs => {
  const plan = planOfLot(handbookPlans, i.lotSize);
  const judged = i.gross.slice(0, plan.sample);
  const meanTare = univariate(i.tares).mean;
  const nominalGross = meanTare + i.quantity * i.density;
  const errors = judged.map((gross) => (gross - nominalGross) / i.density);
  const { mean, sd = 0 } = univariate(errors);
  const errorLimit = sd * plan.factor;
  const unreasonable = errors.filter((error) => error < -i.variation - hair * i.quantity).length;
  const more = plan.sample - judged.length;
  const verdict = (): LotVerdict => {
    if (unreasonable > plan.allowed) return 'reject';
    if (more > 0) return 'take more';
    // a single package has no mean to judge
    if (plan.sample === 1) return 'accept';
    return mean < -errorLimit - hair * i.quantity ? 'reject' : 'accept';
  };
  return {
    verdict: verdict(),
    sample: plan.sample,
    more,
    meanTare,
    nominalGross,
    meanError: mean,
    spread: sd,
    factor: plan.factor,
    errorLimit,
    worst: Math.min(...errors),
    unreasonable,
    allowed: plan.allowed,
  };
};

export const handbook133LotSheet = defineSheet<HandbookLotInputs, HandbookLotOutputs>({
  id: 'contents/handbook-133-lot',
  version: 1,
  inputs: {
    quantity: weighedField('volume', 'Q', labels),
    lotSize: numberField('count', 'N', lotSizes),
    gross: weighedList('mass', 'm_i', someMasses),
    tares: weighedList('mass', 't_i', masses),
    density: weighedField('density', "\\rho'", liquidDensities),
    variation: weighedField('volume', '\\mathrm{MAV}', someVolumes),
  },
  outputs: {
    verdict: choiceField<LotVerdict>('\\text{verdict}', lotVerdicts),
    sample: numberField('count', 'n'),
    more: numberField('count', 'n - n_0'),
    meanTare: weighedField('mass', '\\bar t'),
    nominalGross: weighedField('mass', 'm_Q'),
    meanError: weighedField('volume', '\\bar e'),
    spread: weighedField('volume', 's'),
    factor: numberField('ratio', '\\mathrm{SCF}'),
    errorLimit: weighedField('volume', '\\mathrm{SEL}'),
    worst: weighedField('volume', 'e_{\\min}'),
    unreasonable: numberField('count', 'n_{\\mathrm{MAV}}'),
    allowed: numberField('count', 'c'),
  },
  formula: [
    "m_Q = \\bar t + Q \\rho', \\quad e_i = \\frac{m_i - m_Q}{\\rho'}",
    '\\#\\{e_i < -\\mathrm{MAV}\\} \\le c, \\quad \\bar e \\ge -\\mathrm{SEL}, \\quad \\mathrm{SEL} = s\\, \\mathrm{SCF}, \\quad \\mathrm{SCF} = t_{0.975,\\,n-1} / \\sqrt n',
  ],
  limits: [
    { code: 'RULE_AUTHORITY', broken: () => true },
    { code: 'HANDBOOK_PLAN_MEMORY', broken: () => true },
    { code: 'HANDBOOK_VARIATION_TYPED', broken: () => true },
    { code: 'HANDBOOK_TARES', broken: () => true },
    { code: 'LOT_SURPLUS', broken: ({ gross }, { sample }) => gross.length > sample },
    {
      code: 'HANDBOOK_MEAN_ON_LIMIT',
      broken: ({ quantity }, { meanError, errorLimit }) =>
        meanError < 0 && Math.abs(meanError + errorLimit) <= hair * quantity,
    },
  ],
  sources: [handbookText, handbookTable],
  check: wrong,
  compute: judgeHandbookLot,
});
