import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

export const overflowOptimumCases: readonly SheetCase[] = [
  {
    name: 'a missed bottle is worth 60 mL: 4.068 mL over the level, where the cost itself was least',
    source: statisticsScript,
    inputs: { spread: 1.780449e-6, bottleWorth: 60e-6 },
    outputs: {
      deviations: 2.28463147737,
      over: 4.06766982926e-6,
      chance: 0.988832777196,
      overflow: 4.07448856332e-6,
      cost: 4.74452193159e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'a missed bottle is worth next to nothing: more than half of them miss it',
    source: statisticsScript,
    inputs: { spread: 1.78e-6, bottleWorth: 2e-6 },
    outputs: { deviations: -0.141357990813, over: -0.251617223647e-6, cost: 1.70380452783e-6 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
    notes: ['OPTIMUM_BELOW_HALF'],
  },
];
