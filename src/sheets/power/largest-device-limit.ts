import type { Problem } from '../../quantity/problem.ts';
import { listLengths } from '../list-lengths.ts';
import { beyondTable } from '../table-problem.ts';
import { standardRating } from './standard-device.ts';
import { necRatingsTable } from './standard-ratings.ts';

/**
 * Rating of the largest motor branch device plus the full-load currents of the other motors.
 *
 * Symbols  motors   [n]  A, table full-load currents
 *          devices  [n]  A, ratings of their branch devices, in the same order
 * Returns  A. Of several equal largest devices one counts: the one of the largest motor, which gives the least sum
 * Cost     O(n)
 * Source   NEC 430.62(A)
 */
export const largestDeviceLimit = (motors: readonly number[], devices: readonly number[]): number => {
  const largest = devices.reduce((most, device) => Math.max(most, device), 0);
  const excluded = motors.reduce(
    (most, motor, i) => (devices[i] === largest ? Math.max(most, motor) : most),
    0,
  );
  return largest + motors.reduce((sum, motor) => sum + motor, 0) - excluded;
};

/**
 * Ampacity that several motors ask of one conductor: 125 % of the largest and all others.
 *
 * Symbols  motors  [n]  A, table full-load currents
 * Returns  A
 * Cost     O(n)
 * Source   NEC 430.24
 */
export const motorsAmpacity = (motors: readonly number[]): number =>
  motors.reduce((sum, motor) => sum + motor, 0) +
  0.25 * motors.reduce((most, motor) => Math.max(most, motor), 0);

/** What stands against a common device rounded down from its limit, A: lists that do not match, or no rating so low. */
export const commonDeviceProblems = (
  lists: { readonly motors: readonly number[]; readonly devices: readonly number[] },
  limit: number,
): readonly Problem[] => {
  const lengths = listLengths({ motors: lists.motors, devices: lists.devices });
  if (lengths.length > 0) return lengths;
  return standardRating(limit, 'us-breaker', 'down') === undefined
    ? [beyondTable('devices', limit, '>= 15', necRatingsTable)]
    : [];
};
