import type { DeficiencyTable } from './deficiency-rows.ts';
import { planOfLot } from './plan-of-lot.ts';

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

/** Whose transposition of the sampling table is taken; or a plan that is typed in from an edition that we do not hold. */
export const oimlTables = ['Australia', 'New Zealand', 'typed in'] as const;
export type OimlTable = (typeof oimlTables)[number];

/** Smallest lot of each. Since 2016 lots under 100 have a stepwise plan, of which we hold no copy. */
export const oimlSmallestLots: Readonly<Record<OimlTable, number>> = {
  Australia: 100,
  'New Zealand': 2,
  'typed in': 2,
};

/** OIML R 87 as transposed in Australia, regulation 4.34. */
const australianPlans: readonly OimlPlan[] = [
  { most: 500, sample: 50, factor: 0.379, allowed: 3 },
  { most: 3_200, sample: 80, factor: 0.295, allowed: 5 },
  { most: Number.POSITIVE_INFINITY, sample: 125, factor: 0.234, allowed: 7 },
];

/** The largest lot that New Zealand has weighed whole. */
const wholeLot = 12;

/** As transposed in New Zealand, schedule 7A: its factors count in that the lot is finite. */
const newZealandPlans: readonly OimlPlan[] = [
  { most: 39, sample: 12, factor: 0.746, allowed: 0 },
  { most: 79, sample: 12, factor: 0.826, allowed: 1 },
  { most: 149, sample: 12, factor: 0.86, allowed: 2 },
  { most: 399, sample: 32, factor: 0.465, allowed: 3 },
  { most: 4_000, sample: 32, factor: 0.483, allowed: 4 },
  { most: Number.POSITIVE_INFINITY, sample: 80, factor: 0.295, allowed: 6 },
];

/** The plan of a lot by one of the tables that are held. */
export const oimlPlan = (table: Exclude<OimlTable, 'typed in'>, lotSize: number): OimlPlan =>
  table === 'Australia'
    ? planOfLot(australianPlans, lotSize)
    : lotSize <= wholeLot
      ? { most: wholeLot, sample: lotSize, factor: 0, allowed: 0 }
      : planOfLot(newZealandPlans, lotSize);
