import type { Problem } from '../../quantity/problem.ts';
import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { drawnProblems } from './lot-problems.ts';
import { type LotVerdict, lotVerdicts } from './lot-verdicts.ts';
import { type OimlPlan, type OimlTable, oimlPlan, oimlSmallestLots, oimlTables } from './oiml-constants.ts';
import { oimlExamples, oimlNewZealand, oimlTransposed } from './rule-sources.ts';
import { countBelow, isBelow } from './short-packages.ts';
import { tolerableDeficiency } from './tolerable-deficiency.ts';
import { labels, lotSizes, someVolumes } from './weighing-bounds.ts';

interface OimlLotInputs {
  readonly quantity: number;
  readonly lotSize: number;
  readonly volumes: readonly number[];
  readonly table: OimlTable;
  readonly typedSample: number;
  readonly typedFactor: number;
  readonly typedAllowed: number;
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

const planOf = ({ lotSize, table, typedSample, typedFactor, typedAllowed }: OimlLotInputs): OimlPlan =>
  table === 'typed in'
    ? { most: lotSize, sample: typedSample, factor: typedFactor, allowed: typedAllowed }
    : oimlPlan(table, lotSize);

/** What the table does not reach, or a plan lacks that was typed in. */
const planProblems = ({ lotSize, table, typedSample }: OimlLotInputs): readonly Problem[] => {
  if (lotSize < oimlSmallestLots[table]) {
    return [
      { code: 'OIML_LOT_SMALL', path: 'lotSize', given: lotSize, allowed: `${oimlSmallestLots[table]}` },
    ];
  }
  return table === 'typed in' && !(typedSample >= 1 && typedSample <= lotSize)
    ? [{ code: 'OIML_PLAN_MISSING', path: 'typedSample', given: typedSample, allowed: `1 to ${lotSize}` }]
    : [];
};

/**
 * Lot of packages under OIML R 87. All three must hold; more than may be short is never made good by further packages.
 *
 * Method   e = V - Q;  mean e + s SCF >= 0;  at most c with e < -T;  none with e < -2T
 * Symbols  volumes   [n]     m3 at the reference temperature, in the order drawn; the first ones of the plan count
 *          quantity  scalar  m3, Q, on the label
 *          lotSize   scalar  packages in the lot
 *          table             whose sampling table; `typed in`: n, SCF and c as they were read in an edition
 * Returns  verdict with all that it rests on
 * Cost     O(n)
 * Source   OIML R 87 as transposed in Australia, regulations 4.34 to 4.36; in New Zealand, schedule 7A
 */
const judgeOimlLot = (i: OimlLotInputs): OimlLotOutputs => {
  const { quantity, volumes } = i;
  const plan = planOf(i);
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
  version: 2,
  inputs: {
    quantity: weighedField('volume', 'Q', labels),
    lotSize: numberField('count', 'N', { ...lotSizes, least: 2 }),
    volumes: weighedList('volume', 'V_i', { ...someVolumes, fewest: 2 }),
    table: choiceField<OimlTable>('\\text{table}', oimlTables, 'Australia'),
    typedSample: numberField('count', 'n', { least: 0, most: 1e6, assumed: 0 }),
    typedFactor: numberField('ratio', 'f', { least: 0, most: 10, assumed: 0 }),
    typedAllowed: numberField('count', 'c', { least: 0, most: 1e6, assumed: 0 }),
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
    { code: 'OIML_PLAN_TYPED', broken: ({ table }) => table === 'typed in' },
    { code: 'OIML_FINITE_LOT', broken: ({ table }) => table === 'New Zealand' },
    { code: 'LOT_SURPLUS', broken: ({ volumes }, { sample }) => volumes.length > sample },
    { code: 'LOT_BARRED', broken: (_, { belowTwice }) => belowTwice > 0 },
    {
      code: 'OIML_MEAN_ON_LIMIT',
      broken: ({ quantity }, { correctedError }) => Math.abs(correctedError) <= 1e-9 * quantity,
    },
  ],
  sources: [oimlTransposed, oimlNewZealand, oimlExamples],
  check: (i) => [...drawnProblems(i.lotSize, i.volumes.length, 'volumes'), ...planProblems(i)],
  compute: judgeOimlLot,
});
