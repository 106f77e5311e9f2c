import { choiceField, numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  type AverageLotInputs,
  type AverageLotOutputs,
  type AverageTables,
  averageLabels,
  averageLotFormula,
  averageLotLimits,
  averageLotOutputs,
  averageLotSizes,
  averageVolumes,
  judgeAverageLot,
} from './average-lot.ts';
import { drawnProblems } from './lot-problems.ts';
import { ukErrors, ukRegulations } from './rule-sources.ts';
import { tolerableDeficiency } from './tolerable-deficiency.ts';
import {
  ukDestructiveMeanPlans,
  ukDestructivePlans,
  ukDoublePlans,
  ukMeanPlans,
  ukSinglePlans,
  ukSmallestLot,
  ukSmallLotShare,
} from './uk-constants.ts';

export const ukPlanNames = ['single', 'double', 'destructive'] as const;
/** `destructive`: the packages must be opened. */
export type UkPlanName = (typeof ukPlanNames)[number];

const small = { smallestLot: ukSmallestLot, smallLotShare: ukSmallLotShare } as const;

const tables: Readonly<Record<UkPlanName, AverageTables>> = {
  single: { items: ukSinglePlans, means: ukMeanPlans, ...small },
  double: { items: ukDoublePlans, means: ukMeanPlans, ...small },
  destructive: { items: ukDestructivePlans, means: ukDestructiveMeanPlans, ...small },
};

interface UkLotInputs extends AverageLotInputs {
  readonly plan: UkPlanName;
}

/** Lot of packages under the average system of the United Kingdom. */
export const ukLotSheet = defineSheet<UkLotInputs, AverageLotOutputs>({
  id: 'contents/uk-lot',
  version: 1,
  inputs: {
    quantity: weighedField('volume', 'Q', averageLabels),
    lotSize: numberField('count', 'N', averageLotSizes),
    plan: choiceField<UkPlanName>('\\text{plan}', ukPlanNames, 'double'),
    volumes: averageVolumes,
  },
  outputs: averageLotOutputs,
  formula: averageLotFormula,
  limits: [
    ...averageLotLimits,
    { code: 'UK_DEFICIENCY_MEMORY', broken: () => true },
    { code: 'UK_PLAN_MEMORY', broken: ({ plan }) => plan !== 'single' },
    {
      code: 'DESTRUCTIVE_SMALL_LOT',
      broken: ({ lotSize, plan }) => lotSize < ukSmallestLot && plan === 'destructive',
    },
  ],
  sources: [ukRegulations, ukErrors],
  check: ({ lotSize, volumes }) => drawnProblems(lotSize, volumes.length, 'volumes'),
  compute: (i) => judgeAverageLot(tables[i.plan], i, tolerableDeficiency('UK average system', i.quantity)!),
});
