import { inUnit, unitNamed } from './convert.ts';
import { decimalMark } from './decimal-mark.ts';
import { defaultUnit, type UnitSystem } from './default-unit.ts';
import type { Kind, Si } from './kinds.ts';

export interface FormatOptions {
  readonly locale: string;
  /** Id or any spelling of a unit of the kind; otherwise the usual unit of `system`. */
  readonly unit?: string | undefined;
  readonly system?: UnitSystem | undefined;
  /** Significant digits at most; trailing zeros are left out. */
  readonly digits?: number | undefined;
}

/** A quantity as it is printed: number and unit apart, because the unit is set one step softer. */
export interface QuantityText {
  readonly number: string;
  readonly unit: string;
  /** Both joined, the unit where its kind has it. */
  readonly text: string;
}

const thinNoBreakSpace = '\u202f';
const noBreakSpace = '\u00a0';
const minus = '\u2212';
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

// Outside these a row of zeros is harder to read than a power of ten.
const smallest = 1e-5;
const largest = 1e9;

const withThousands = (whole: string): string => {
  // ISO 80000-1, 7.3.1, memory: groups of three from the decimal mark. Four digits too, as the pages show `1 050`.
  let out = whole;
  for (let at = whole.length - 3; at > 0; at -= 3) out = out.slice(0, at) + thinNoBreakSpace + out.slice(at);
  return out;
};

const withPower = (value: number, digits: number, mark: string): string => {
  const [mantissa = '0', power = '0'] = value.toExponential(digits - 1).split('e');
  const short = mantissa.includes('.') ? mantissa.replace(/\.?0+$/, '') : mantissa;
  const size = [...power.replace(/[+-]/, '')].map((digit) => raised[Number(digit)]).join('');
  return `${short.replace('.', mark)}×10${power.startsWith('-') ? '⁻' : ''}${size}`;
};

/**
 * A number to at most so many significant digits, with the decimal mark of the locale, a thin no-break space
 * between thousands in every locale (a point or a comma there would not be read back safely), and a true minus.
 */
export const formatNumber = (value: number, locale: string, digits: number): string => {
  const size = Math.abs(value);
  const mark = decimalMark(locale);
  const wanted = Math.min(Math.max(Math.trunc(digits), 1), 17);
  const rounded = Number(size.toPrecision(wanted));
  let text: string;
  if (rounded !== 0 && (rounded < smallest || rounded >= largest)) text = withPower(size, wanted, mark);
  else {
    // toFixed, since the plain text of a number below 1e-6 has an exponent
    const places = rounded === 0 ? 0 : Math.max(0, wanted - 1 - Math.floor(Math.log10(rounded)));
    const [whole = '0', fraction = ''] = rounded.toFixed(Math.min(places, 100)).split('.');
    const kept = fraction.replace(/0+$/, '');
    text = withThousands(whole) + (kept === '' ? '' : mark + kept);
  }
  return value < 0 && rounded !== 0 ? minus + text : text;
};

// Digits that a count needs to be shown whole. A count that is not whole is a mean or an estimate; other kinds are
// measured, and four digits outlast their meters.
const usualDigits = (kind: Kind, value: number): number => {
  if (kind !== 'count') return 4;
  return Number.isInteger(value) ? 15 : 6;
};

const joined = (number: string, label: string, before: boolean): string => {
  if (label === '') return number;
  if (before) return `${label}${noBreakSpace}${number}`;
  return label.startsWith('/') || label === '°' ? number + label : number + noBreakSpace + label;
};

/**
 * An SI value as text in a unit of its kind. What is printed is read back by `parseQuantity` to the digits shown.
 *
 * Method   converted, rounded to significant digits, trailing zeros left out; a power of ten only below 1e-5 and
 *          from 1e9
 * Returns  number, unit, and both joined by no-break space
 * Problems none: a value that is not finite, or a unit of another kind, is a mistake of the caller and throws
 * Cost     O(digits)
 */
export const formatQuantity = <K extends Kind>(
  value: Si<K>,
  kind: K,
  options: FormatOptions,
): QuantityText => {
  const unit = unitNamed(kind, options.unit ?? defaultUnit(kind, options.system ?? 'metric'));
  const inIt = inUnit(value, unit);
  if (!Number.isFinite(inIt)) throw new RangeError(`${kind} is not finite`);
  const number = formatNumber(inIt, options.locale, options.digits ?? usualDigits(kind, inIt));
  return { number, unit: unit.label, text: joined(number, unit.label, unit.before) };
};
