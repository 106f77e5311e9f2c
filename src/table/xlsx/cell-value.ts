import type { NumberForm } from './number-form.ts';
import { dayText, durationText } from './serial-day.ts';
import { cellText } from './xml-text.ts';

/** A cell as its part of the file has it. */
export interface RawCell {
  /** `s` shared text, `str` and `inlineStr` text, `b` yes or no, `e` an error, `d` a day of ISO 8601, `n` a number. */
  readonly type: string;
  readonly form: NumberForm;
  readonly value: string;
  /** Text that stands in the cell itself. */
  readonly inline: string;
  readonly formula: string;
}

export interface Workbook {
  readonly shared: readonly string[];
  readonly from1904: boolean;
}

/** The shortest text that names the same number; a whole number keeps every digit, also beyond what a double holds. */
const numberText = (value: string): string => {
  const number = Number(value);
  return value.trim() === '' || !Number.isFinite(number) || /^-?[1-9][0-9]*$/.test(value)
    ? value
    : String(number);
};

const numberOf = (value: string, form: NumberForm, from1904: boolean): string => {
  const number = Number(value);
  if (value.trim() === '' || !Number.isFinite(number)) return value;
  switch (form) {
    case 'day':
      return dayText(number, from1904) ?? numberText(value);
    case 'duration':
      return durationText(number) ?? numberText(value);
    case 'percent':
      // 0.07 times 100 is 7.000000000000001 in a double; fifteen digits are what a spreadsheet shows
      return `${Number((number * 100).toPrecision(15))} %`;
    default:
      return numberText(value);
  }
};

/**
 * What a cell holds, as text: numbers with a point, days in ISO 8601, a share with its percent sign, TRUE and FALSE,
 * the name of an error. A formula gives what the spreadsheet last made of it; one that was never worked out stands
 * as it was written, so that it is seen and not taken for an empty cell.
 */
export const cellValue = (cell: RawCell, { shared, from1904 }: Workbook): string => {
  const { type, value, inline, form } = cell;
  if (type === 'inlineStr') return cellText(inline);
  if (value === '') return cell.formula === '' ? '' : type === 'str' ? '' : `=${cell.formula}`;
  switch (type) {
    case 's':
      return shared[Number(value)] ?? '';
    case 'str':
      return cellText(value);
    case 'b':
      return value.trim() === '1' || value.trim() === 'true' ? 'TRUE' : 'FALSE';
    case 'e':
      return value;
    case 'd':
      return value.replace(/T00:00:00(?:\.0+)?Z?$/, '');
    default:
      return numberOf(value, form, from1904);
  }
};
