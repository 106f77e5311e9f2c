import type { ShiftProblemCode } from './shift-problems.ts';

/** Words of what a line can't be run with. */
export const shiftProblemText: { readonly en: Readonly<Record<ShiftProblemCode, string>> } = {
  en: {
    SHIFT_OUT_OF_RANGE: '{path}: {given} cannot be. Allowed: {allowed}.',
    SHIFT_NOT_WHOLE: '{path}: {given} is no count. Allowed: {allowed}.',
    SHIFT_SHARE: '{path}: a share of {given} cannot be. Allowed: {allowed}.',
    SHIFT_QUANTILES: '{path}: the times of a spread must be {allowed}.',
    SHIFT_ROOM_ZERO:
      '{path}: there is no room ({given}) before {station}. A bottle must be able to stand there, or none ever moves.',
    SHIFT_NO_WAY_OUT: '{path}: {station} never lets a bottle go, so there is no way out of the line.',
    SHIFT_NO_TIME: '{path}: {station} takes no time, so bottles without number would come at once.',
    SHIFT_CLEAR_ZERO:
      '{path}: "{cause}" is cleared in no time ({given}). Give the time for which it stops, or leave it out.',
    SHIFT_BETWEEN_ZERO:
      '{path}: "{cause}" would strike again at once ({given}). Give the mean running time between two stops.',
    SHIFT_STEP_LONG: '{path}: a step of {given} s is longer than the times of "{cause}". Allowed: {allowed}.',
    SHIFT_CAUSE_TWICE: '{path}: two causes are called "{given}". Each needs a name of its own.',
    SHIFT_STATION_UNKNOWN: '{path}: "{cause}" stops {given}, which is no station of the line.',
    SHIFT_SENSORS_SWAPPED:
      '{path}: the high sensor sees {given} caps and the low one {low}. Are the two swapped?',
    SHIFT_CHUTE_SMALL:
      '{path}: a chute of {given} caps never holds the {heads} that the heads take at once, so they would wait for ever.',
    SHIFT_SORTER_STILL: '{path}: {station} brings {given} caps a second, so the heads would wait for ever.',
    SHIFT_ZONES_LONG: '{path}: the zones hold {given} rows and the washer {allowed}.',
    SHIFT_HOLD_WITHOUT_STATION:
      '{path}: "{rule}" lets one station wait for another, and this line does not have both.',
    SHIFT_ROOM_FOR_SETS:
      '{path}: room for {given} bottles. With gaps in the rows the fill station may lack one bottle while no further row has room. Allowed: {allowed}.',
    SHIFT_DEADLOCK: '{path}: these wait for each other, so the line never moves: {loop}.',
  },
};
