import type { Calculation } from './calculation.ts';
import type { Known } from './known.ts';

/** A shift where the agreement names none, common practice. */
const usualShift = 8 * 3600;

/** Length of a shift. */
export const shiftTime = (c: Calculation): Known => c.numberOr('/agreement/shift', 'time', usualShift);
