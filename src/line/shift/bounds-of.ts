import { runsWanted } from '../../sheets/rate/runs-wanted.ts';
import { studentQuantile } from '../../statistics/student.ts';
import type { Bounds, Figure } from './shift-result.ts';

/**
 * Interval of a mean over shifts.
 *
 * Method   the sheet `interval-of-runs`, from mean and spread instead of the list
 * Returns  undefined for fewer than two shifts
 */
export const boundsOf = (
  { mean, spread }: Figure,
  shifts: number,
  confidence: number,
): Bounds | undefined => {
  if (shifts < 2) return undefined;
  const halfWidth = (studentQuantile(0.5 * (1 + confidence), shifts - 1) * spread) / Math.sqrt(shifts);
  return { mean, low: mean - halfWidth, high: mean + halfWidth };
};

/** Shifts that narrow the interval of a mean to a share of it; undefined where the mean is 0. */
export const shiftsWanted = (
  { mean, spread }: Figure,
  shifts: number,
  relative: number,
  confidence: number,
): number | undefined =>
  mean === 0 || shifts < 2
    ? undefined
    : runsWanted({ mean, spread, runs: shifts, relative, confidence }).wanted;
