import type { FloorShiftProblemCode } from './problems.ts';

/** Words of why a floor can't be run for a shift. */
export const floorShiftText: { readonly en: Readonly<Record<FloorShiftProblemCode, string>> } = {
  en: {
    SHIFT_HOLDS_CIRCLE:
      '{path}: the hold rules {rules} let stations wait for each other, so none ever goes on: {stations}.',
    SHIFT_HOLD_EMPTY:
      '{path}: by {rule} {station} waits while {by} is empty, and {by} is empty until {station} lets bottles come: neither ever goes on.',
    SHIFT_ENDS_EARLY: '{path}: {station} has no way out: no station comes after it.',
    SHIFT_BRANCHES:
      '{path}: several stations come after {station}; a shift is worked out for one way through the line.',
    SHIFT_ONE_SENSOR:
      '{path}: {given} is named as the low and as the high sensor of the chute; they are two.',
    SHIFT_FILL_NEVER_ENDS: '{path}: the fill never ends: {lanes} cannot reach the count on this supply.',
    SHIFT_CHANGE_SHAPE:
      '{path} wants a place of the book, an equals sign and what is to stand there, such as "+WASH/dwell=9 s", not {given}.',
  },
};
