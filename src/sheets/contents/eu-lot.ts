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
import {
  euDestructiveMeanPlans,
  euDestructivePlans,
  euDoublePlans,
  euMeanPlans,
  euSmallestLot,
} from './eu-constants.ts';
import { drawnProblems } from './lot-problems.ts';
import { euDirective, euItalian } from './rule-sources.ts';
import { tolerableDeficiency } from './tolerable-deficiency.ts';

export const euPlanNames = ['double', 'destructive'] as const;
/** `destructive`: the packages must be opened. */
export type EuPlanName = (typeof euPlanNames)[number];

const tables: Readonly<Record<EuPlanName, AverageTables>> = {
  double: { items: euDoublePlans, means: euMeanPlans, smallestLot: euSmallestLot },
  destructive: {
    items: euDestructivePlans,
    means: euDestructiveMeanPlans,
    smallestLot: euSmallestLot,
  },
};

interface EuLotInputs extends AverageLotInputs {
  readonly plan: EuPlanName;
}

/** Lot of packages under the average system of Directive 76/211/EEC. */
export const euLotSheet = defineSheet<EuLotInputs, AverageLotOutputs>({
  id: 'contents/eu-lot',
  version: 1,
  inputs: {
    quantity: weighedField('volume', 'Q', averageLabels),
    lotSize: numberField('count', 'N', averageLotSizes),
    plan: choiceField<EuPlanName>('\\text{plan}', euPlanNames, 'double'),
    volumes: averageVolumes,
  },
  outputs: averageLotOutputs,
  formula: averageLotFormula,
  limits: [
    ...averageLotLimits,
    {
      code: 'EU_SMALL_LOT',
      broken: ({ lotSize }, { itemVerdict }) => lotSize < euSmallestLot && itemVerdict === 'not decided',
    },
    {
      code: 'DESTRUCTIVE_SMALL_LOT',
      broken: ({ lotSize, plan }) => lotSize < euSmallestLot && plan === 'destructive',
    },
  ],
  sources: [euDirective, euItalian],
  check: ({ lotSize, volumes }) => drawnProblems(lotSize, volumes.length, 'volumes'),
  compute: (i) => judgeAverageLot(tables[i.plan], i, tolerableDeficiency('EU average system', i.quantity)!),
});
