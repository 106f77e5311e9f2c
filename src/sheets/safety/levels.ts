import { hour } from './bounds.ts';

/** Performance levels of ISO 13849-1, the lowest first. */
export const levels = ['a', 'b', 'c', 'd', 'e'] as const;
export type Level = (typeof levels)[number];

/** Dangerous failures in an hour from which a level ends: ISO 13849-1:2006 table 3, lower edge included, read. */
const bands: readonly (readonly [level: Level, from: number])[] = [
  ['a', 1e-5],
  ['b', 3e-6],
  ['c', 1e-6],
  ['d', 1e-7],
];
/** At and above this no level is left; below the lower one the bands end, and it counts as e. */
export const noLevelFrom = 1e-4 / hour;
export const bandsEnd = 1e-8 / hour;
// seconds and hours leave a last bit: a rate on an edge belongs to the worse band
const rounding = 1 - 1e-9;

export const hasLevel = (rate: number): boolean => rate < noLevelFrom * rounding;

/**
 * Performance level that a rate of dangerous failures falls in.
 *
 * Method   the first band from a on whose lower edge is not above the rate; e below all
 * Symbols  PFHd  rate  scalar  1/s  below 1e-4 in an hour
 * Returns  a to e
 * Cost     O(bands)
 * Source   ISO 13849-1:2006 table 3
 */
export const levelOf = (rate: number): Level =>
  bands.find(([, from]) => rate * hour >= from * rounding)?.[0] ?? 'e';

export const lowerLevel = (one: Level, other: Level): Level => (one < other ? one : other);
