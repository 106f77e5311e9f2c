export interface HandbookPlan {
  /** Largest lot. */
  readonly most: number;
  readonly sample: number;
  /** Sample correction factor: t(0.975, n-1)/sqrt(n), to three decimals; a single package has none. */
  readonly factor: number;
  /** Minus errors beyond the maximum allowable variation that the sample may hold. */
  readonly allowed: number;
}

/** NIST Handbook 133, table 2-1, category A: recalled, the factors computed. A lot under twelve is weighed whole. */
export const handbookPlans: readonly HandbookPlan[] = [
  { most: 1, sample: 1, factor: 0, allowed: 0 },
  { most: 2, sample: 2, factor: 8.985, allowed: 0 },
  { most: 3, sample: 3, factor: 2.484, allowed: 0 },
  { most: 4, sample: 4, factor: 1.591, allowed: 0 },
  { most: 5, sample: 5, factor: 1.242, allowed: 0 },
  { most: 6, sample: 6, factor: 1.049, allowed: 0 },
  { most: 7, sample: 7, factor: 0.925, allowed: 0 },
  { most: 8, sample: 8, factor: 0.836, allowed: 0 },
  { most: 9, sample: 9, factor: 0.769, allowed: 0 },
  { most: 10, sample: 10, factor: 0.715, allowed: 0 },
  { most: 11, sample: 11, factor: 0.672, allowed: 0 },
  { most: 250, sample: 12, factor: 0.635, allowed: 0 },
  { most: 3_200, sample: 24, factor: 0.422, allowed: 0 },
  // 0.290 computed, 0.291 recalled as printed: the smaller one passes less
  { most: Number.POSITIVE_INFINITY, sample: 48, factor: 0.29, allowed: 1 },
];

/** A scale must have at least this many divisions, and the variation at least this many of them. */
export const handbookScale = { divisions: 100, variationInDivisions: 6 } as const;
