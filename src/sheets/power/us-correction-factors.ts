import type { Source } from '../frame.ts';

export const correctionTables: Source = {
  title: 'NEC tables of ambient correction and of more than three conductors, 310.15(B)(2)(a) and (3)(a)',
  edition: '2014',
  place: 'public transcription',
  mark: 'read',
};

/** Insulation or terminal columns of table 310.16, degC. */
export const temperatureColumns = ['60', '75', '90'] as const;
export type TemperatureColumn = (typeof temperatureColumns)[number];

type Factor = number | undefined;
/** Highest ambient of a row in degC, then the factors of the three columns. */
const ambientRows: readonly (readonly [number, Factor, Factor, Factor])[] = [
  [10, 1.29, 1.2, 1.15],
  [15, 1.22, 1.15, 1.12],
  [20, 1.15, 1.11, 1.08],
  [25, 1.08, 1.05, 1.04],
  [30, 1, 1, 1],
  [35, 0.91, 0.94, 0.96],
  [40, 0.82, 0.88, 0.91],
  [45, 0.71, 0.82, 0.87],
  [50, 0.58, 0.75, 0.82],
  [55, 0.41, 0.67, 0.76],
  [60, undefined, 0.58, 0.71],
  [65, undefined, 0.47, 0.65],
  [70, undefined, 0.33, 0.58],
];

/** Most conductors of a row, share of the ampacity. */
const groupRows: readonly (readonly [number, number])[] = [
  [3, 1],
  [6, 0.8],
  [9, 0.7],
  [20, 0.5],
  [30, 0.45],
  [40, 0.4],
  [Number.POSITIVE_INFINITY, 0.35],
];

/** Degrees Celsius come from kelvins, so a row's own bound must not fall out by rounding. */
const rounding = 1e-6;

/**
 * Ambient factor of the 60, 75 or 90 degC column.
 *
 * Symbols  ambient  scalar  K;  column  degC of the insulation
 * Returns  ratio; undefined where the table has none
 * Cost     O(rows)
 * Source   NEC table 310.15(B)(2)(a)
 */
export const usAmbientFactor = (ambient: number, column: TemperatureColumn): number | undefined =>
  ambientRows.find(([most]) => ambient - 273.15 <= most + rounding)?.[1 + temperatureColumns.indexOf(column)];

/**
 * Share of the ampacity where more than three conductors carry current in one raceway.
 *
 * Symbols  conductors  count
 * Returns  ratio
 * Cost     O(rows)
 * Source   NEC table 310.15(B)(3)(a)
 */
export const usGroupFactor = (conductors: number): number =>
  groupRows.find(([most]) => conductors <= most)![1];
