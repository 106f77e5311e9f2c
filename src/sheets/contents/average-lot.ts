import { univariate } from '../../statistics/univariate.ts';
import { choiceField, numberField, weighedField, weighedList } from '../fields.ts';
import type { Limit } from '../frame.ts';
import type { ItemPlan, MeanPlan } from './average-plans.ts';
import { type LotVerdict, lotVerdicts } from './lot-verdicts.ts';
import { planOfLot } from './plan-of-lot.ts';
import { countBelow, isBelow } from './short-packages.ts';

/** The tables of one average system for one way of checking. */
export interface AverageTables {
  readonly items: readonly ItemPlan[];
  readonly means: readonly MeanPlan[];
  /** Lots under this are checked whole. */
  readonly smallestLot: number;
  /** Of a lot that is checked whole, the share that may be defective; absent where the text that we hold gives none. */
  readonly smallLotShare?: number;
}

export interface AverageLotInputs {
  readonly quantity: number;
  readonly lotSize: number;
  readonly volumes: readonly number[];
}

export interface AverageLotOutputs {
  readonly verdict: LotVerdict;
  readonly itemVerdict: LotVerdict;
  readonly meanVerdict: LotVerdict;
  readonly counted: number;
  readonly more: number;
  readonly deficiency: number;
  readonly defective: number;
  readonly barred: number;
  readonly meanSample: number;
  readonly mean: number;
  readonly spread: number;
  readonly leastMean: number;
}

interface ItemCheck {
  readonly verdict: LotVerdict;
  readonly counted: number;
  readonly more: number;
}

/**
 * Check of single packages by a plan of one or two stages.
 *
 * Method   count the defective ones of all stages by now: up to `accept` accepted, from `reject` on rejected, else more
 * Symbols  volumes  [n]     m3 in the order drawn
 *          least    scalar  m3, defective below
 * Returns  verdict, packages that were counted, packages still to draw
 * Cost     O(n)
 * Source   the plan
 */
const checkItems = (plan: ItemPlan, volumes: readonly number[], least: number): ItemCheck => {
  for (const { total, accept, reject } of plan.stages) {
    const counted = Math.min(total, volumes.length);
    const defective = countBelow(volumes.slice(0, counted), least);
    const more = total - counted;
    // enough bad ones reject before the stage is full: further packages cannot take one away
    if (defective >= reject) return { verdict: 'reject', counted, more: 0 };
    if (more > 0) return { verdict: 'take more', counted, more };
    if (defective <= accept) return { verdict: 'accept', counted, more: 0 };
  }
  return { verdict: 'not decided', counted: volumes.length, more: 0 };
};

/** A lot that is checked whole: its share of defective ones against what the rule allows, if we hold it. */
const checkWhole = (
  { smallLotShare }: AverageTables,
  { lotSize, volumes }: AverageLotInputs,
  least: number,
): ItemCheck => {
  const [counted, defective] = [volumes.length, countBelow(volumes, least)];
  const more = lotSize - counted;
  if (smallLotShare !== undefined && defective > smallLotShare * lotSize) {
    return { verdict: 'reject', counted, more: 0 };
  }
  if (more > 0) return { verdict: 'take more', counted, more };
  const decided = smallLotShare !== undefined || defective === 0;
  return { verdict: decided ? 'accept' : 'not decided', counted, more };
};

/** Both checks must accept; one that rejects is enough. */
const both = (items: LotVerdict, mean: LotVerdict): LotVerdict =>
  (['reject', 'take more', 'not decided'] as const).find((each) => items === each || mean === each) ??
  'accept';

/**
 * Lot of packages under an average system: single packages by a plan, and the mean.
 *
 * Method   items: defective below Q - T, counted by the plan;  mean: of its own sample, mean >= Q - f s
 * Symbols  volumes     [n]     m3 at the reference temperature, in the order drawn
 *          quantity    scalar  m3, Q, on the label
 *          lotSize     scalar  packages in the lot
 *          deficiency  scalar  m3, T, by the rule
 * Returns  verdict with all that it rests on
 * Cost     O(n)
 * Source   the tables' own
 */
export const judgeAverageLot = (
  tables: AverageTables,
  i: AverageLotInputs,
  deficiency: number,
): AverageLotOutputs => {
  const { quantity, lotSize, volumes } = i;
  const whole = lotSize < tables.smallestLot;
  const least = quantity - deficiency;
  const items = whole
    ? checkWhole(tables, i, least)
    : checkItems(planOfLot(tables.items, lotSize), volumes, least);
  // a lot that is weighed whole has its mean, and nothing to allow for
  const meanPlan = whole ? { sample: lotSize, factor: 0 } : planOfLot(tables.means, lotSize);
  const averaged = volumes.slice(0, meanPlan.sample);
  const { mean, sd = 0 } = univariate(averaged);
  const leastMean = quantity - meanPlan.factor * sd;
  const meanVerdict =
    averaged.length < meanPlan.sample ? 'take more' : isBelow(mean, leastMean) ? 'reject' : 'accept';
  const counted = volumes.slice(0, items.counted);
  const verdict = both(items.verdict, meanVerdict);
  return {
    verdict,
    itemVerdict: items.verdict,
    meanVerdict,
    counted: items.counted,
    more: verdict === 'take more' ? Math.max(items.more, meanPlan.sample - averaged.length) : 0,
    deficiency,
    defective: countBelow(counted, least),
    barred: countBelow(counted, quantity - 2 * deficiency),
    meanSample: meanPlan.sample,
    mean,
    spread: sd,
    leastMean,
  };
};

/** What every sheet of an average system gives. */
export const averageLotOutputs = {
  verdict: choiceField<LotVerdict>('\\text{verdict}', lotVerdicts),
  itemVerdict: choiceField<LotVerdict>('\\text{items}', lotVerdicts),
  meanVerdict: choiceField<LotVerdict>('\\text{mean}', lotVerdicts),
  counted: numberField('count', 'n'),
  more: numberField('count', '\\Delta n'),
  deficiency: weighedField('volume', 'T'),
  defective: numberField('count', 'n_T'),
  barred: numberField('count', 'n_{2T}'),
  meanSample: numberField('count', 'n_m'),
  mean: weighedField('volume', '\\bar V'),
  spread: weighedField('volume', 's'),
  leastMean: weighedField('volume', 'Q - f s'),
} as const;

/** The table of deficiencies of the average systems goes from 5 mL to 10 L. */
export const averageLabels = { least: 5e-6, most: 0.01 } as const;
export const averageLotSizes = { least: 2, most: 1e6 } as const;
export const averageVolumes = weighedList('volume', 'V_i', { above: 0, most: 1, fewest: 2 });

export const averageLotFormula: readonly string[] = [
  '\\#\\{V_i < Q - T\\} \\le a \\text{: accept}, \\quad \\ge r \\text{: reject}, \\quad \\text{else take more}',
  '\\bar V \\ge Q - f s, \\quad f = t_{0.995,\\,n_m-1} / \\sqrt{n_m}',
];

/** Notes that every sheet of an average system may give. */
export const averageLotLimits: readonly Limit<AverageLotInputs, AverageLotOutputs>[] = [
  { code: 'RULE_AUTHORITY', broken: () => true },
  {
    code: 'LOT_SURPLUS',
    broken: ({ volumes }, { counted, meanSample }) => volumes.length > Math.max(counted, meanSample),
  },
  { code: 'LOT_BARRED', broken: (_, { barred }) => barred > 0 },
];
