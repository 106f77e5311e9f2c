import type { ItemPlan, MeanPlan } from './average-plans.ts';
import type { DeficiencyTable } from './deficiency-rows.ts';

/** SI 2006/659, schedule 3: recalled, and the figures of Directive 76/211/EEC. */
export const ukDeficiencies: DeficiencyTable = {
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

/** Smaller ones are checked whole. */
export const ukSmallestLot = 100;
/** Of a lot that is checked whole, the share that may be defective: schedule 2, 3.6. */
export const ukSmallLotShare = 0.05;

/** Schedule 2, 3.3 to 3.5. */
export const ukSinglePlans: readonly ItemPlan[] = [
  { most: 500, stages: [{ total: 50, accept: 3, reject: 4 }] },
  { most: 3_200, stages: [{ total: 80, accept: 5, reject: 6 }] },
  { most: Number.POSITIVE_INFINITY, stages: [{ total: 125, accept: 7, reject: 8 }] },
];

/** Schedule 2, 3.7 on: its table was not read, these are the figures of the directive. */
export const ukDoublePlans: readonly ItemPlan[] = [
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

/** As the double plans: the figures of the directive. */
export const ukDestructivePlans: readonly ItemPlan[] = [
  { most: Number.POSITIVE_INFINITY, stages: [{ total: 20, accept: 1, reject: 2 }] },
];

/** Schedule 2, 4.5 and 4.6. */
export const ukMeanPlans: readonly MeanPlan[] = [
  { most: 500, sample: 30, factor: 0.503 },
  { most: Number.POSITIVE_INFINITY, sample: 50, factor: 0.379 },
];
export const ukDestructiveMeanPlans: readonly MeanPlan[] = [
  { most: Number.POSITIVE_INFINITY, sample: 20, factor: 0.64 },
];
