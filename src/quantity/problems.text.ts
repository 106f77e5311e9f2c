import type { QuantityProblemCode } from './problems.ts';

/** Words of the problems. `of` and `asked` are kinds: their words stand in `kinds.text.ts`. */
export const quantityProblemText: {
  readonly en: Readonly<Record<QuantityProblemCode, string>>;
} = {
  en: {
    QUANTITY_UNREADABLE: '{path}: "{given}" is not a number with a unit. Units accepted here: {allowed}.',
    QUANTITY_UNIT_MISSING: '{path}: "{given}" has no unit. Units accepted here: {allowed}.',
    QUANTITY_UNIT_UNKNOWN:
      '{path}: "{given}" has the unit "{unit}", which is not known. Units accepted here: {allowed}.',
    QUANTITY_WRONG_KIND:
      '{path}: "{given}" has "{unit}", a unit of {of}; here {asked} is asked. Units accepted here: {allowed}.',
    QUANTITY_GAUGE_FOR_ABSOLUTE:
      '{path}: "{given}" is a gauge pressure ("{unit}"); here an absolute pressure is asked. Units accepted here: {allowed}.',
    QUANTITY_ABSOLUTE_FOR_GAUGE:
      '{path}: "{given}" is an absolute pressure ("{unit}"); here a gauge pressure is asked. Units accepted here: {allowed}.',
    QUANTITY_NOT_FINITE: '{path}: "{given}" is too large to compute with.',
    QUANTITY_AMBIGUOUS_NUMBER:
      '{path}: "{given}" can be read in two ways, because its mark may part thousands or decimals. Write one of: {allowed}.',
    QUANTITY_BELOW_ABSOLUTE_ZERO: '{path}: "{given}" lies below absolute zero.',
    QUANTITY_BELOW_VACUUM: '{path}: "{given}" is an absolute pressure below vacuum.',
    QUANTITY_RANGE_REVERSED: '{path}: the range "{given}" begins above its end.',
    QUANTITY_SPREAD_NEGATIVE: '{path}: the spread "{given}" is negative.',
    QUANTITY_SPREAD_TWICE: '{path}: the spread "{given}" is given beside a value that has one already.',
    QUANTITY_SPREAD_ON_RANGE: '{path}: the spread "{given}" stands beside a range, which has its own ends.',
    QUANTITY_FORM: '{path}: "{given}" is not a quantity. Accepted: {allowed}.',
    QUANTITY_STANDING: '{path}: "{given}" is not a standing. Accepted: {allowed}.',
  },
};
