import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { drawnProblems } from './lot-problems.ts';
import { type LotVerdict, lotVerdicts } from './lot-verdicts.ts';
import { oimlPlans, oimlSmallestLot } from './oiml-constants.ts';
import { planOfLot } from './plan-of-lot.ts';
import { oimlExamples, oimlTransposed } from './rule-sources.ts';
import { countBelow, isBelow } from './short-packages.ts';
import { tolerableDeficiency } from './tolerable-deficiency.ts';
import { labels, someVolumes } from './weighing-bounds.ts';

interface OimlLotInputs {
  readonly quantity: number;
  readonly lotSize: number;
  readonly volumes: readonly number[];
}

interface OimlLotOutputs {
  readonly verdict: LotVerdict;
  readonly sample: number;
  readonly more: number;
  readonly meanError: number;
  readonly spread: number;
  readonly factor: number;
  readonly correctedError: number;
  readonly deficiency: number;
  readonly below: number;
  readonly allowed: number;
  readonly belowTwice: number;
}

/**
 * Lot of packages under OIML R 87. All three must hold; more than may be short is never made good by further packages.
 *
 * Method   e = V - Q;  mean e + s SCF >= 0;  at most c with e < -T;  none with e < -2T
 * Symbols  volumes   [n]     m3 at the reference temperature, in the order drawn; the first ones of the plan count
 *          quantity  scalar  m3, Q, on the label
 *          lotSize   scalar  packages in the lot
 * Returns  verdict with all that it rests on
 * Cost     O(n)
 * Source   OIML R 87 as transposed in Australia, regulations 4.34 to 4.36
 */
const judgeOimlLot = ({ quantity, lotSize, volumes }: OimlLotInputs): OimlLotOutputs => {
  const plan = planOfLot(oimlPlans, lotSize);
  const judged = volumes.slice(0, plan.sample);
  const { mean, sd = 0 } = univariate(judged);
  const T = tolerableDeficiency('OIML R 87', quantity)!;
  const correctedError = mean - quantity + sd * plan.factor;
  const below = countBelow(judged, quantity - T);
  const belowTwice = countBelow(judged, quantity - 2 * T);
  const more = plan.sample - judged.length;
  const verdict = (): LotVerdict => {
    if (below > plan.allowed || belowTwice > 0) return 'reject';
    if (more > 0) return 'take more';
    return isBelow(quantity + correctedError, quantity) ? 'reject' : 'accept';
  };
  return {
    verdict: verdict(),
    sample: plan.sample,
    more,
    meanError: mean - quantity,
    spread: sd,
    factor: plan.factor,
    correctedError,
    deficiency: T,
    below,
    allowed: plan.allowed,
    belowTwice,
  };
};

export const oimlLotSheet = defineSheet<OimlLotInputs, OimlLotOutputs>({
  id: 'contents/oiml-lot',
  version: 1,
  inputs: {
    quantity: weighedField('volume', 'Q', labels),
    lotSize: numberField('count', 'N', { least: oimlSmallestLot, most: 1e6 }),
    volumes: weighedList('volume', 'V_i', { ...someVolumes, fewest: 2 }),
  },
  outputs: {
    verdict: choiceField<LotVerdict>('\\text{verdict}', lotVerdicts),
    sample: numberField('count', 'n'),
    more: numberField('count', 'n - n_0'),
    meanError: weighedField('volume', '\\bar e'),
    spread: weighedField('volume', 's'),
    factor: numberField('ratio', 'f'),
    correctedError: weighedField('volume', '\\bar e + f s'),
    deficiency: weighedField('volume', 'T'),
    below: numberField('count', 'n_T'),
    allowed: numberField('count', 'c'),
    belowTwice: numberField('count', 'n_{2T}'),
  },
  formula: [
    'e_i = V_i - Q, \\quad \\bar e + f s \\ge 0, \\quad f = t_{0.995,\\,n-1} / \\sqrt n',
    '\\#\\{e_i < -T\\} \\le c, \\quad \\#\\{e_i < -2T\\} = 0',
  ],
  limits: [
    { code: 'RULE_AUTHORITY', broken: () => true },
    { code: 'LOT_SURPLUS', broken: ({ volumes }, { sample }) => volumes.length > sample },
    { code: 'LOT_BARRED', broken: (_, { belowTwice }) => belowTwice > 0 },
    {
      code: 'OIML_MEAN_ON_LIMIT',
      broken: ({ quantity }, { correctedError }) => Math.abs(correctedError) <= 1e-9 * quantity,
    },
  ],
  sources: [oimlTransposed, oimlExamples],
  check: ({ lotSize, volumes }) => drawnProblems(lotSize, volumes.length, 'volumes'),
  compute: judgeOimlLot,
});
