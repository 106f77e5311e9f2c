import type { SheetCase } from '../sheet-case.ts';
import { hour, year } from './bounds.ts';
import type { Category } from './classes.ts';
import { iso13849, iso13849Examples } from './sources.ts';

type Rows = readonly (readonly [years: number, rate: number])[];

/** Category 2, low coverage: rows that were read, years and 1/h. */
const category2Low: Rows = [
  [3, 2.58e-5],
  [3.3, 2.33e-5],
  [3.6, 2.13e-5],
  [3.9, 1.95e-5],
  [4.3, 1.76e-5],
  [4.7, 1.6e-5],
  [5.1, 1.47e-5],
  [5.6, 1.33e-5],
  [6.2, 1.19e-5],
  [6.8, 1.08e-5],
  [7.5, 9.75e-6],
  [8.2, 8.87e-6],
  [9.1, 7.94e-6],
  [10, 7.18e-6],
  [11, 6.44e-6],
  [12, 5.84e-6],
  [13, 5.33e-6],
  [15, 4.53e-6],
  [16, 4.21e-6],
  [18, 3.68e-6],
  [20, 3.26e-6],
  [22, 2.93e-6],
  [24, 2.65e-6],
  [27, 2.32e-6],
  [30, 2.06e-6],
  [33, 1.85e-6],
  [36, 1.67e-6],
  [39, 1.53e-6],
  [43, 1.37e-6],
  [47, 1.24e-6],
  [100, 5.28e-7],
];

/** Category 2, medium coverage. */
const category2Medium: Rows = [
  [3, 1.99e-5],
  [3.3, 1.79e-5],
  [3.6, 1.62e-5],
  [3.9, 1.48e-5],
  [4.3, 1.33e-5],
  [4.7, 1.2e-5],
  [5.1, 1.1e-5],
  [5.6, 9.87e-6],
  [6.2, 8.8e-6],
  [6.8, 7.93e-6],
  [7.5, 7.1e-6],
  [8.2, 6.43e-6],
  [9.1, 5.71e-6],
  [10, 5.14e-6],
  [11, 4.53e-6],
  [12, 4.04e-6],
  [13, 3.64e-6],
  [15, 3.01e-6],
  [16, 2.77e-6],
  [18, 2.37e-6],
  [20, 2.06e-6],
  [22, 1.82e-6],
  [24, 1.62e-6],
  [27, 1.39e-6],
  [30, 1.21e-6],
  [33, 1.06e-6],
  [36, 9.39e-7],
  [39, 8.4e-7],
  [43, 7.34e-7],
  [47, 6.49e-7],
  [100, 2.29e-7],
];

/** Category 3, low coverage. */
const category3Low: Rows = [
  [3, 1.26e-5],
  [3.3, 1.13e-5],
  [3.6, 1.03e-5],
  [3.9, 9.37e-6],
  [4.3, 8.36e-6],
  [4.7, 7.58e-6],
  [5.1, 6.91e-6],
  [5.6, 6.21e-6],
  [6.2, 5.53e-6],
  [6.8, 4.98e-6],
  [7.5, 4.45e-6],
  [8.2, 4.02e-6],
  [9.1, 3.57e-6],
  [10, 3.21e-6],
  [11, 2.86e-6],
  [12, 2.49e-6],
  [13, 2.23e-6],
  [15, 1.82e-6],
  [16, 1.67e-6],
  [18, 1.41e-6],
  [20, 1.22e-6],
  [22, 1.07e-6],
  [24, 9.47e-7],
  [27, 8.09e-7],
  [30, 6.94e-7],
  [33, 5.94e-7],
  [36, 5.17e-7],
  [39, 4.53e-7],
  [43, 3.87e-7],
  [47, 3.35e-7],
  [100, 1.01e-7],
];

/** Category 3, medium coverage. */
const category3Medium: Rows = [
  [3, 6.09e-6],
  [3.3, 5.41e-6],
  [3.6, 4.86e-6],
  [3.9, 4.4e-6],
  [4.3, 3.89e-6],
  [4.7, 3.48e-6],
  [5.1, 3.15e-6],
  [5.6, 2.83e-6],
  [6.2, 2.47e-6],
  [6.8, 2.2e-6],
  [7.5, 1.95e-6],
  [8.2, 1.74e-6],
  [9.1, 1.53e-6],
  [10, 1.36e-6],
  [11, 1.18e-6],
  [12, 1.04e-6],
  [13, 9.21e-7],
  [15, 7.44e-7],
  [16, 6.76e-7],
  [18, 5.67e-7],
  [20, 4.88e-7],
  [22, 4.21e-7],
  [24, 3.7e-7],
  [27, 3.1e-7],
  [30, 2.65e-7],
  [33, 2.3e-7],
  [36, 2.01e-7],
  [39, 1.78e-7],
  [43, 1.54e-7],
  [47, 1.34e-7],
  [100, 4.29e-8],
];

/** Category 4. */
const category4: Rows = [
  [30, 9.54e-8],
  [33, 8.57e-8],
  [100, 2.47e-8],
];

/** Recalled rows. */
const recalled2Low: Rows = [
  [51, 1.13e-6],
  [56, 1.02e-6],
  [62, 9.06e-7],
  [68, 8.17e-7],
  [75, 7.31e-7],
  [82, 6.61e-7],
  [91, 5.88e-7],
];

/** Recalled rows. */
const recalled2Medium: Rows = [
  [51, 5.8e-7],
  [56, 5.1e-7],
  [62, 4.43e-7],
  [68, 3.9e-7],
  [75, 3.4e-7],
  [82, 3.01e-7],
  [91, 2.61e-7],
];

/** Recalled rows. */
const recalled3Low: Rows = [
  [51, 2.93e-7],
  [56, 2.52e-7],
  [62, 2.13e-7],
  [68, 1.84e-7],
  [75, 1.57e-7],
  [82, 1.35e-7],
  [91, 1.14e-7],
];

/** What the model gives for category 4: coverage 99 %. */
const model4: Rows = [
  [30, 9.577e-8],
  [33, 8.574e-8],
  [36, 7.755e-8],
  [39, 7.074e-8],
  [43, 6.328e-8],
  [47, 5.721e-8],
  [51, 5.218e-8],
  [56, 4.699e-8],
  [62, 4.195e-8],
  [68, 3.788e-8],
  [75, 3.401e-8],
  [82, 3.085e-8],
  [91, 2.755e-8],
  [100, 2.488e-8],
];

/** What it gives for category 3 with medium coverage, 90 %. */
const model3Medium: Rows = [
  [51, 1.173e-7],
  [56, 1.017e-7],
  [62, 8.719e-8],
  [68, 7.589e-8],
  [75, 6.559e-8],
  [82, 5.75e-8],
  [91, 4.939e-8],
];

/** What it gives for category 3 with low coverage, 60 %. */
const model3Low: Rows = [
  [51, 3.154e-7],
  [56, 2.694e-7],
  [62, 2.269e-7],
  [68, 1.94e-7],
  [75, 1.643e-7],
  [82, 1.413e-7],
  [91, 1.184e-7],
];

const rowsOf = (
  category: Category,
  coverage: number,
  rows: Rows,
  source: SheetCase['source'],
  tolerance: SheetCase['tolerance'],
  notes: readonly string[] = [],
): readonly SheetCase[] =>
  rows.map(([years, rate]) => ({
    name: `category ${category}, coverage ${100 * coverage} %, ${years} years: ${rate.toExponential(2)} an hour`,
    source,
    inputs: { category, coverage, lifetime: years * year },
    outputs: { row: years * year, rate: rate / hour },
    tolerance,
    notes: ['CAUTION_GUARDING', 'FAILURE_TABLE_INFORMATIVE', ...notes],
  }));

const annex = { ...iso13849, place: 'annex K; public transcription' } as const;
const recalled = { title: 'ISO 13849-1', edition: '2006', place: 'annex K', mark: 'memory' } as const;
const printed = { relative: 1e-9, reason: 'as printed' } as const;
/** 1/(8760 M): the rate of a single channel without a test. */
const single = {
  title: 'rate of a single channel',
  place: '1/(8760 h M), against the three digits of ISO 13849-1:2006 annex K',
  mark: 'computed',
} as const;
const singleRows: Rows = [
  ...[
    3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1, 10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27,
  ],
].map((years) => [years, 1 / (8760 * years)]);
const singleRows1: Rows = [30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91, 100].map((years) => [
  years,
  1 / (8760 * years),
]);
/**
 * Two like channels, each failing at 1/M; a failure that the test finds stops the machine and is repaired, another
 * stays; a fiftieth takes both channels; a failure of both is dangerous and repaired. Mean over 20 years.
 */
const markov = {
  title: 'Markov chain of two channels with 2 % common cause over 20 years',
  place: 'independent script, midpoint rule with 4000 steps',
  mark: 'computed',
} as const;

export const failureRateCases: readonly SheetCase[] = [
  ...rowsOf('2', 0.6, category2Low, annex, printed),
  ...rowsOf('2', 0.9, category2Medium, annex, printed),
  ...rowsOf('3', 0.6, category3Low, annex, printed),
  ...rowsOf('3', 0.9, category3Medium, annex, printed),
  ...rowsOf('4', 0.99, category4, annex, printed),
  ...rowsOf('2', 0.6, recalled2Low, recalled, printed, ['FAILURE_ROW_RECALLED']),
  ...rowsOf('2', 0.9, recalled2Medium, recalled, printed, ['FAILURE_ROW_RECALLED']),
  ...rowsOf('3', 0.6, recalled3Low, recalled, printed, ['FAILURE_ROW_RECALLED']),
  ...rowsOf('B', 0, singleRows, single, { relative: 5e-3, reason: 'three printed digits' }),
  ...rowsOf('1', 0, singleRows1, single, { relative: 5e-3, reason: 'three printed digits' }),
  ...rowsOf('4', 0.99, model4, markov, {
    relative: 0.01,
    reason: 'three printed digits, and a model that is not the one of the table in all',
  }),
  ...rowsOf('3', 0.9, model3Medium, markov, {
    relative: 0.02,
    reason:
      'the model is not the one of the table: up to 1 % off in the rows that were read from 30 years on',
  }),
  ...rowsOf('3', 0.6, model3Low, markov, {
    relative: 0.09,
    reason: 'the model lies 8 to 9 % over the rows that were read from 30 to 47 years',
  }),
  {
    name: 'guard with two channels, 20.81 years: the row of 20, level c',
    source: { ...iso13849Examples, place: 'annex I, example B: category 3, level c; public transcription' },
    inputs: { category: '3', coverage: 0.671, lifetime: 20.81 * year },
    outputs: { row: 20 * year, level: 'c' },
    tolerance: printed,
  },
  {
    name: 'switch and contactor, 14.3 years: category B, level b',
    source: { ...iso13849Examples, place: 'annex I, example A; public transcription' },
    inputs: { category: 'B', coverage: 0, lifetime: 14.3 * year },
    outputs: { row: 13 * year, level: 'b' },
    tolerance: printed,
  },
];
