import type { ItemPlan, MeanPlan } from './average-plans.ts';
import type { DeficiencyTable } from './deficiency-rows.ts';

/** Directive 76/211/EEC, Annex I 2.4; a share is rounded up to a tenth. */
export const euDeficiencies: DeficiencyTable = {
  least: 5,
  rows: [
    { most: 50, share: 0.09 },
    { most: 100, fixed: 4.5 },
    { most: 200, share: 0.045 },
    { most: 300, fixed: 9 },
    { most: 500, share: 0.03 },
    { most: 1_000, fixed: 15 },
    { most: 10_000, share: 0.015 },
  ],
  rounding: [{ most: Number.POSITIVE_INFINITY, step: 0.1 }],
};

export const euSmallestLot = 100;

/** Annex II 2.2.1. */
export const euDoublePlans: readonly ItemPlan[] = [
  {
    most: 500,
    stages: [
      { total: 30, accept: 1, reject: 3 },
      { total: 60, accept: 4, reject: 5 },
    ],
  },
  {
    most: 3_200,
    stages: [
      { total: 50, accept: 2, reject: 5 },
      { total: 100, accept: 6, reject: 7 },
    ],
  },
  {
    most: Number.POSITIVE_INFINITY,
    stages: [
      { total: 80, accept: 3, reject: 7 },
      { total: 160, accept: 8, reject: 9 },
    ],
  },
];

/** Annex II 2.2.2. */
export const euDestructivePlans: readonly ItemPlan[] = [
  { most: Number.POSITIVE_INFINITY, stages: [{ total: 20, accept: 1, reject: 2 }] },
];

/** Annex II 2.3. */
export const euMeanPlans: readonly MeanPlan[] = [
  { most: 500, sample: 30, factor: 0.503 },
  { most: Number.POSITIVE_INFINITY, sample: 50, factor: 0.379 },
];
export const euDestructiveMeanPlans: readonly MeanPlan[] = [
  { most: Number.POSITIVE_INFINITY, sample: 20, factor: 0.64 },
];
