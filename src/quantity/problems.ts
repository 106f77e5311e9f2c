/** Every problem of a quantity that came as text, and what its sentence needs beside the path and what was given. */
export const quantityProblems = {
  /** No number with a unit could be made out. Allowed: units of the kind. */
  QUANTITY_UNREADABLE: ['given', 'allowed'],
  /** A number without a unit, where the kind wants one. */
  QUANTITY_UNIT_MISSING: ['given', 'allowed'],
  /** A word that is no unit of any kind. */
  QUANTITY_UNIT_UNKNOWN: ['given', 'unit', 'allowed'],
  /** A unit of another kind; `of` names the kind, `asked` the one that was asked. */
  QUANTITY_WRONG_KIND: ['given', 'unit', 'of', 'asked', 'allowed'],
  QUANTITY_GAUGE_FOR_ABSOLUTE: ['given', 'unit', 'allowed'],
  QUANTITY_ABSOLUTE_FOR_GAUGE: ['given', 'unit', 'allowed'],
  QUANTITY_NOT_FINITE: ['given'],
  /** A comma that may part thousands or decimals. Allowed: both readings. */
  QUANTITY_AMBIGUOUS_NUMBER: ['given', 'allowed'],
  QUANTITY_BELOW_ABSOLUTE_ZERO: ['given'],
  QUANTITY_BELOW_VACUUM: ['given'],
  /** The first end of a range lies above the second. */
  QUANTITY_RANGE_REVERSED: ['given'],
  /** A spread that is negative. */
  QUANTITY_SPREAD_NEGATIVE: ['given'],
  /** A spread given twice, in the text and beside it. */
  QUANTITY_SPREAD_TWICE: ['given'],
  /** A range has hard ends; a spread beside it says something else. */
  QUANTITY_SPREAD_ON_RANGE: ['given'],
  /** Neither text nor `{ value, spread, standing, by, on }`. */
  QUANTITY_FORM: ['given', 'allowed'],
  QUANTITY_STANDING: ['given', 'allowed'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type QuantityProblemCode = keyof typeof quantityProblems;
