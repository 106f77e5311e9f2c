/** Every problem of a line that is to be run for a shift, and what its sentence needs beside the path. */
export const shiftProblems = {
  /** A number that must be finite and not less than what is allowed. */
  SHIFT_OUT_OF_RANGE: ['given', 'allowed'],
  SHIFT_NOT_WHOLE: ['given', 'allowed'],
  /** A share outside 0 to 1, or one that leaves no bottle at all. */
  SHIFT_SHARE: ['given', 'allowed'],
  /** Quantiles that fall, or fewer than two. */
  SHIFT_QUANTILES: ['allowed'],
  SHIFT_ROOM_ZERO: ['given', 'station'],
  /** A station that lets nothing out. */
  SHIFT_NO_WAY_OUT: ['station'],
  /** Nothing at the head of the line takes time, so it would run without end in no time. */
  SHIFT_NO_TIME: ['station'],
  SHIFT_CLEAR_ZERO: ['given', 'cause'],
  SHIFT_BETWEEN_ZERO: ['given', 'cause'],
  /** Steps of a pattern that are longer than what they make up. */
  SHIFT_STEP_LONG: ['given', 'allowed', 'cause'],
  SHIFT_CAUSE_TWICE: ['given'],
  SHIFT_STATION_UNKNOWN: ['given', 'cause'],
  SHIFT_SENSORS_SWAPPED: ['given', 'low'],
  SHIFT_CHUTE_SMALL: ['given', 'heads'],
  SHIFT_SORTER_STILL: ['given', 'station'],
  SHIFT_ZONES_LONG: ['given', 'allowed'],
  /** A hold of, or by, something that never is. */
  SHIFT_HOLD_WITHOUT_STATION: ['rule'],
  /** A row and what is left of a set find no room together. */
  SHIFT_ROOM_FOR_SETS: ['given', 'allowed'],
  /** Events that wait for each other; `loop` names them. */
  SHIFT_DEADLOCK: ['loop'],
} as const;

export type ShiftProblemCode = keyof typeof shiftProblems;
