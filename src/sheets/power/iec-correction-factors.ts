import type { Source } from '../frame.ts';

export const iecCorrectionTables: Source = {
  title: 'IEE wiring regulations, ambient and grouping factors for PVC 70 degC',
  edition: 'BS 7671:2008',
  place: 'public transcription, two copies',
  mark: 'read',
};

/** Ambient in degC, factor. Between two rows the hotter one counts; over the last there is none. */
const ambientRows: readonly (readonly [number, number])[] = [
  [25, 1.03],
  [30, 1],
  [35, 0.94],
  [40, 0.87],
  [45, 0.79],
  [50, 0.71],
  [55, 0.61],
];

/** Factor for 1 to 9 circuits, bunched or enclosed. */
const groupFactors = [1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.54, 0.52, 0.5] as const;

const rounding = 1e-6;

/**
 * Ambient factor of PVC cable. Between two rows the factor of the hotter one.
 *
 * Symbols  ambient  scalar  K
 * Returns  ratio; undefined above 55 degC. Below 25 degC that row is kept: the table begins there
 * Cost     O(rows)
 */
export const iecAmbientFactor = (ambient: number): number | undefined =>
  ambientRows.find(([celsius]) => ambient - 273.15 <= celsius + rounding)?.[1];

/** Grouping factor of 1 to 9 circuits; undefined beyond. A broken number counts as the next whole one. */
export const iecGroupFactor = (circuits: number): number | undefined =>
  groupFactors[Math.max(1, Math.ceil(circuits)) - 1];
