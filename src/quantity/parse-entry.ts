import { type Kind, type Si, si } from './kinds.ts';
import { checkedSi, isProblem, type Measure, problem, type ReadOptions, readMeasure } from './measure.ts';
import { accept, type Problem, type Result, refuse } from './problem.ts';
import type { Unit } from './unit.ts';

/** A value as it was typed: alone, as a range with hard ends, or with a spread that holds the truth in 95 of 100. */
export interface Entry<K extends Kind> {
  readonly value: Si<K>;
  readonly low?: Si<K>;
  readonly high?: Si<K>;
  /** Half width in the SI unit of the kind; for a temperature, in kelvins of difference. */
  readonly spread?: number;
  readonly unit: string;
  readonly digits: number;
}

const rangeMarks = [' to ', '...', '..', '…', ' \u2013 ', '\u2013'] as const;
const spreadMarks = ['±', '+/-', '+-', '+\u2212'] as const;

const cutAt = (text: string, marks: readonly string[]): readonly [string, string] | undefined => {
  for (const mark of marks) {
    // from 1: a sign before the first number is not a mark between two
    const at = text.indexOf(mark, 1);
    if (at > 0) return [text.slice(0, at), text.slice(at + mark.length)];
  }
  return undefined;
};

const single = <K extends Kind>(kind: K, text: string, options: ReadOptions): Result<Entry<K>> => {
  const read = readMeasure(text, kind, options);
  if (isProblem(read)) return refuse(read);
  const value = checkedSi(read.number, read.unit, kind, text, options);
  if (typeof value !== 'number') return refuse(value);
  return accept({ value: si(kind, value), unit: read.unit.id, digits: read.digits });
};

/** Of `2 to 3 kg` the second half says what is wrong; the first only waits for its unit. */
const telling = (left: Problem, right: Measure | Problem): Problem =>
  left.code === 'QUANTITY_UNIT_MISSING' && isProblem(right) ? right : left;

/** Two measures of which one may lean on the unit of the other. */
const pair = (
  kind: Kind,
  [first, second]: readonly [string, string],
  options: ReadOptions,
): readonly [Measure, Measure] | Problem => {
  const right = readMeasure(second, kind, options);
  const left = readMeasure(first, kind, options, isProblem(right) ? undefined : right.unit);
  if (isProblem(left)) return telling(left, right);
  const again = isProblem(right) ? readMeasure(second, kind, options, left.unit) : right;
  return isProblem(again) ? again : [left, again];
};

/** A range with hard ends: `2 to 3 bar`, or the two texts of a book's list. */
export const parseRange = <K extends Kind>(
  ends: readonly [string, string],
  kind: K,
  options: ReadOptions,
  given: unknown = ends,
): Result<Entry<K>> => {
  const both = pair(kind, ends, options);
  if ('code' in both) return refuse(both);
  const [from, to] = both;
  const low = checkedSi(from.number, from.unit, kind, given, options);
  const high = checkedSi(to.number, to.unit, kind, given, options);
  if (typeof low !== 'number') return refuse(low);
  if (typeof high !== 'number') return refuse(high);
  if (low > high) return refuse(problem('QUANTITY_RANGE_REVERSED', options, given));
  // halved first: the sum of two large ends may overflow
  const value = low / 2 + high / 2;
  return accept({
    value: si(kind, value),
    low: si(kind, low),
    high: si(kind, high),
    unit: to.unit.id,
    digits: Math.max(from.digits, to.digits),
  });
};

/** The half width that a text names, in SI: in its own unit, in that of the value, or as `%` of the value. */
const spreadIn = (
  text: string,
  kind: Kind,
  value: number,
  valueUnit: Unit,
  options: ReadOptions,
): number | Problem => {
  const read = readMeasure(text, kind, options, valueUnit);
  if (!isProblem(read)) {
    // a width has no offset: 0.5 degC of spread is half a kelvin
    return (read.number * read.unit.times) / read.unit.over;
  }
  // 2 % of a temperature on its own scale means nothing
  if (read.code !== 'QUANTITY_WRONG_KIND' || kind === 'temperature') return read;
  const share = readMeasure(text, 'ratio', options);
  if (isProblem(share) || share.unit.id !== '%') return read;
  return (share.number / 100) * Math.abs(value);
};

/** A value and its spread from two texts. */
export const parseSpread = <K extends Kind>(
  [first, second]: readonly [string, string],
  kind: K,
  options: ReadOptions,
  spreadOptions: ReadOptions = options,
): Result<Entry<K>> => {
  const right = readMeasure(second, kind, spreadOptions);
  const left = readMeasure(first, kind, options, isProblem(right) ? undefined : right.unit);
  if (isProblem(left)) return refuse(telling(left, right));
  const value = checkedSi(left.number, left.unit, kind, first, options);
  if (typeof value !== 'number') return refuse(value);
  const spread = spreadIn(second, kind, value, left.unit, spreadOptions);
  if (typeof spread !== 'number') return refuse(spread);
  if (spread < 0) return refuse(problem('QUANTITY_SPREAD_NEGATIVE', spreadOptions, second));
  if (!Number.isFinite(value - spread) || !Number.isFinite(value + spread)) {
    return refuse(problem('QUANTITY_NOT_FINITE', spreadOptions, second));
  }
  return accept({ value: si(kind, value), spread, unit: left.unit.id, digits: left.digits });
};

/** `(2.1 ± 0.1) bar`, as ISO 80000-1 writes it, without its parentheses. */
const opened = (text: string): string => {
  const end = text.indexOf(')');
  const inside = text.slice(1, end);
  return text.startsWith('(') && end > 0 && cutAt(inside, spreadMarks) !== undefined
    ? `${inside} ${text.slice(end + 1)}`
    : text;
};

/**
 * A quantity with what may stand beside it: `2.1 bar`, `2 to 3 bar`, `2 .. 3 bar`, `2.1 ± 0.1 bar`, `2.1 bar ± 2 %`.
 *
 * Method   cut at the mark between two numbers, each half read as `parseQuantity` does; the value of a range is
 *          its middle
 * Returns  value; low and high of a range; spread (half width at 95 %) where one was typed
 * Problems those of `parseQuantity`; QUANTITY_RANGE_REVERSED, QUANTITY_SPREAD_NEGATIVE
 * Cost     O(length)
 */
export const parseEntry = <K extends Kind>(text: string, kind: K, options: ReadOptions): Result<Entry<K>> => {
  if (typeof text !== 'string' || text.length > 250) return single(kind, text, options);
  const trimmed = opened(text.trim());
  const spread = cutAt(trimmed, spreadMarks);
  if (spread !== undefined) return parseSpread(spread, kind, options);
  const range = cutAt(trimmed, rangeMarks);
  return range === undefined ? single(kind, text, options) : parseRange(range, kind, options, text);
};
