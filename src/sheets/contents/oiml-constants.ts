import type { DeficiencyTable } from './deficiency-rows.ts';

/** OIML R 87 as transposed in Australia, regulation 4.36: up to a tenth to 1000 mL, to a whole one above. */
export const oimlDeficiencies: DeficiencyTable = {
  least: 0,
  rows: [
    { most: 50, share: 0.09 },
    { most: 100, fixed: 4.5 },
    { most: 200, share: 0.045 },
    { most: 300, fixed: 9 },
    { most: 500, share: 0.03 },
    { most: 1_000, fixed: 15 },
    { most: 10_000, share: 0.015 },
    { most: 15_000, fixed: 150 },
    { most: 50_000, share: 0.01 },
  ],
  rounding: [
    { most: 1_000, step: 0.1 },
    { most: Number.POSITIVE_INFINITY, step: 1 },
  ],
};

export interface OimlPlan {
  /** Largest lot. */
  readonly most: number;
  readonly sample: number;
  /** By which the standard deviation is multiplied: t(0.995, n-1)/sqrt(n). */
  readonly factor: number;
  /** Packages that may be short of more than the deficiency. */
  readonly allowed: number;
}

/** Lots under 100 have a stepwise plan since 2016, of which we hold no copy. */
export const oimlSmallestLot = 100;

/** OIML R 87 as transposed in Australia, regulation 4.34. */
export const oimlPlans: readonly OimlPlan[] = [
  { most: 500, sample: 50, factor: 0.379, allowed: 3 },
  { most: 3_200, sample: 80, factor: 0.295, allowed: 5 },
  { most: Number.POSITIVE_INFINITY, sample: 125, factor: 0.234, allowed: 7 },
];
