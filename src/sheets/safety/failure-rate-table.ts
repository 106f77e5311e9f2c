import { hour, year } from './bounds.ts';
import type { Category, CoverageClass } from './classes.ts';

/**
 * Dangerous failures in an hour by lifetime, category and coverage: ISO 13849-1:2006 annex K (informative), public
 * transcription. The transcription is damaged from 51 years on and in category 4: rows of 51 to 91 years, and
 * category 4 but at 30, 33 and 100 years, are recalled.
 */
export interface FailureRow {
  readonly years: number;
  /** 1/h, in the order of `failureColumns`; category 4 begins at 30 years. */
  readonly rates: readonly [number, number, number, number, number, number | undefined];
}

export const failureColumns = ['B or 1', '2 low', '2 medium', '3 low', '3 medium', '4'] as const;
export type FailureColumn = (typeof failureColumns)[number];

const row = (years: number, ...rates: readonly number[]): FailureRow => ({
  years,
  rates: [rates[0]!, rates[1]!, rates[2]!, rates[3]!, rates[4]!, rates[5]],
});

export const failureRows: readonly FailureRow[] = [
  row(3, 3.8e-5, 2.58e-5, 1.99e-5, 1.26e-5, 6.09e-6),
  row(3.3, 3.46e-5, 2.33e-5, 1.79e-5, 1.13e-5, 5.41e-6),
  row(3.6, 3.17e-5, 2.13e-5, 1.62e-5, 1.03e-5, 4.86e-6),
  row(3.9, 2.93e-5, 1.95e-5, 1.48e-5, 9.37e-6, 4.4e-6),
  row(4.3, 2.65e-5, 1.76e-5, 1.33e-5, 8.36e-6, 3.89e-6),
  row(4.7, 2.43e-5, 1.6e-5, 1.2e-5, 7.58e-6, 3.48e-6),
  row(5.1, 2.24e-5, 1.47e-5, 1.1e-5, 6.91e-6, 3.15e-6),
  row(5.6, 2.04e-5, 1.33e-5, 9.87e-6, 6.21e-6, 2.83e-6),
  row(6.2, 1.84e-5, 1.19e-5, 8.8e-6, 5.53e-6, 2.47e-6),
  row(6.8, 1.68e-5, 1.08e-5, 7.93e-6, 4.98e-6, 2.2e-6),
  row(7.5, 1.52e-5, 9.75e-6, 7.1e-6, 4.45e-6, 1.95e-6),
  row(8.2, 1.39e-5, 8.87e-6, 6.43e-6, 4.02e-6, 1.74e-6),
  row(9.1, 1.25e-5, 7.94e-6, 5.71e-6, 3.57e-6, 1.53e-6),
  row(10, 1.14e-5, 7.18e-6, 5.14e-6, 3.21e-6, 1.36e-6),
  row(11, 1.04e-5, 6.44e-6, 4.53e-6, 2.86e-6, 1.18e-6),
  row(12, 9.51e-6, 5.84e-6, 4.04e-6, 2.49e-6, 1.04e-6),
  row(13, 8.78e-6, 5.33e-6, 3.64e-6, 2.23e-6, 9.21e-7),
  row(15, 7.61e-6, 4.53e-6, 3.01e-6, 1.82e-6, 7.44e-7),
  row(16, 7.13e-6, 4.21e-6, 2.77e-6, 1.67e-6, 6.76e-7),
  row(18, 6.34e-6, 3.68e-6, 2.37e-6, 1.41e-6, 5.67e-7),
  row(20, 5.71e-6, 3.26e-6, 2.06e-6, 1.22e-6, 4.88e-7),
  row(22, 5.19e-6, 2.93e-6, 1.82e-6, 1.07e-6, 4.21e-7),
  row(24, 4.76e-6, 2.65e-6, 1.62e-6, 9.47e-7, 3.7e-7),
  row(27, 4.23e-6, 2.32e-6, 1.39e-6, 8.09e-7, 3.1e-7),
  row(30, 3.8e-6, 2.06e-6, 1.21e-6, 6.94e-7, 2.65e-7, 9.54e-8),
  row(33, 3.46e-6, 1.85e-6, 1.06e-6, 5.94e-7, 2.3e-7, 8.57e-8),
  row(36, 3.17e-6, 1.67e-6, 9.39e-7, 5.17e-7, 2.01e-7, 7.77e-8),
  row(39, 2.93e-6, 1.53e-6, 8.4e-7, 4.53e-7, 1.78e-7, 7.11e-8),
  row(43, 2.65e-6, 1.37e-6, 7.34e-7, 3.87e-7, 1.54e-7, 6.37e-8),
  row(47, 2.43e-6, 1.24e-6, 6.49e-7, 3.35e-7, 1.34e-7, 5.76e-8),
  row(51, 2.24e-6, 1.13e-6, 5.8e-7, 2.93e-7, 1.19e-7, 5.26e-8),
  row(56, 2.04e-6, 1.02e-6, 5.1e-7, 2.52e-7, 1.03e-7, 4.73e-8),
  row(62, 1.84e-6, 9.06e-7, 4.43e-7, 2.13e-7, 8.84e-8, 4.22e-8),
  row(68, 1.68e-6, 8.17e-7, 3.9e-7, 1.84e-7, 7.68e-8, 3.8e-8),
  row(75, 1.52e-6, 7.31e-7, 3.4e-7, 1.57e-7, 6.62e-8, 3.41e-8),
  row(82, 1.39e-6, 6.61e-7, 3.01e-7, 1.35e-7, 5.79e-8, 3.08e-8),
  row(91, 1.25e-6, 5.88e-7, 2.61e-7, 1.14e-7, 4.94e-8, 2.74e-8),
  row(100, 1.14e-6, 5.28e-7, 2.29e-7, 1.01e-7, 4.29e-8, 2.47e-8),
];

/** Years of the rows that are recalled as a whole, and of those of category 4 that were read. */
const recalledFrom = 51;
const recalledTo = 91;
const category4Read: readonly number[] = [30, 33, 100];
/** Figures more than a hundredth off the slope of their column, perhaps errors of the transcription: years, column. */
const doubtful: readonly (readonly [years: number, column: FailureColumn])[] = [
  [5.6, '3 medium'],
  [11, '3 low'],
  [20, '3 medium'],
  [27, '3 low'],
];

/** A figure that was recalled; that of a single channel follows from its lifetime and needs no memory. */
export const isRecalled = (years: number, column: FailureColumn): boolean => {
  if (column === 'B or 1') return false;
  return column === '4' ? !category4Read.includes(years) : years >= recalledFrom && years <= recalledTo;
};
export const isDoubtful = (years: number, column: FailureColumn): boolean =>
  doubtful.some(([at, of]) => at === years && of === column);

/** Longest that category B counts (memory); longer gives no more than this row. */
const longestB = 27;
// years from hours or from days leave a last bit
const rounding = 1 + 1e-9;

export const failureColumn = (category: Category, coverage: CoverageClass): FailureColumn => {
  if (category === 'B' || category === '1') return 'B or 1';
  if (category === '4') return '4';
  return coverage === 'low' ? `${category} low` : `${category} medium`;
};

/** The row that a lifetime of 3 years or more counts in: the next lower one. */
export const failureRow = (category: Category, lifetime: number): FailureRow => {
  const years = (lifetime / year) * rounding;
  const most = category === 'B' ? Math.min(years, longestB) : years;
  return failureRows.findLast((each) => each.years <= most)!;
};

export const rateIn = ({ rates }: FailureRow, column: FailureColumn): number =>
  rates[failureColumns.indexOf(column)]! / hour;
