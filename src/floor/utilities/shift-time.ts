import type { Calculation, Known } from './calculation.ts';

/** A shift where the agreement names none, common practice. */
const usualShift = 8 * 3600;

/** Length of a shift. */
export const shiftTime = (c: Calculation): Known => c.numberOr('/agreement/shift', 'time', usualShift);
