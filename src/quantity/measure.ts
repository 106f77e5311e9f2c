import { inSi } from './convert.ts';
import type { Kind } from './kinds.ts';
import type { Problem } from './problem.ts';
import type { QuantityProblemCode } from './problems.ts';
import { type ScannedNumber, scanNumber, startsNumber } from './scan-number.ts';
import type { Unit } from './unit.ts';
import { findUnit, kindsOfUnit } from './unit-lookup.ts';
import { unitsByKind } from './units-by-kind.ts';

export interface ReadOptions {
  /** Where the text stands, for a problem. */
  readonly path: string;
  /** Language of the typist, for a comma that may be either; absent for a stored book. */
  readonly locale?: string | undefined;
}

/** A number with its unit, not yet in SI. */
export interface Measure {
  readonly number: number;
  readonly digits: number;
  readonly unit: Unit;
}

/** Longer than any quantity that a person types; what is longer is not worth reading. */
const longest = 120;

/** What came, short enough to be shown. */
export const shown = (given: unknown): unknown =>
  typeof given === 'string' && given.length > longest ? `${given.slice(0, longest)}…` : given;

export const problem = (
  code: QuantityProblemCode,
  options: ReadOptions,
  given: unknown,
  more: Pick<Problem, 'allowed' | 'parts'> = {},
): Problem => ({ code, path: options.path, given: shown(given), ...more });

/** Labels of the units of a kind, for a sentence: the bare number too, where the kind takes it. */
export const unitsAccepted = (kind: Kind): readonly string[] =>
  unitsByKind[kind].map(({ label }) => (label === '' ? '1' : label));

/** Kinds whose values are written in two units: `5 ft 3 in`, `1 h 30 min`, `2 lb 3 oz`. */
const compound: readonly Kind[] = ['length', 'time', 'mass'];

const notAUnit = (kind: Kind, name: string, given: string, options: ReadOptions): Problem => {
  const allowed = unitsAccepted(kind);
  if (name === '') return problem('QUANTITY_UNIT_MISSING', options, given, { allowed });
  const of = kindsOfUnit(name);
  if (kind === 'absolutePressure' && of.includes('gaugePressure')) {
    return problem('QUANTITY_GAUGE_FOR_ABSOLUTE', options, given, { allowed, parts: { unit: name } });
  }
  if (kind === 'gaugePressure' && of.includes('absolutePressure')) {
    return problem('QUANTITY_ABSOLUTE_FOR_GAUGE', options, given, { allowed, parts: { unit: name } });
  }
  const first = of[0];
  return first === undefined
    ? problem('QUANTITY_UNIT_UNKNOWN', options, given, { allowed, parts: { unit: name } })
    : problem('QUANTITY_WRONG_KIND', options, given, {
        allowed,
        parts: { unit: name, of: first, asked: kind },
      });
};

const isGap = (char: string | undefined): boolean =>
  char !== undefined && ' \u00a0\u2009\u202f"\'”’″′'.includes(char);

/** Where a second number begins behind a unit, as in `5 ft 3 in` or `5'-3 1/2"`. */
const secondNumber = (text: string, from: number): number => {
  for (let i = from + 1; i < text.length; i += 1) {
    const behind = text[i - 1];
    const joined = behind === '-' && text[i - 2] !== ' ';
    if ((isGap(behind) || joined) && startsNumber(text, i) && !'+-\u2212\u2013'.includes(text[i] as string))
      return i;
  }
  return -1;
};

const isFault = (scanned: ReturnType<typeof scanNumber>): scanned is Exclude<typeof scanned, ScannedNumber> =>
  typeof scanned === 'string' || 'ambiguous' in scanned;

const readTwoPart = (
  kind: Kind,
  text: string,
  first: ScannedNumber,
  options: ReadOptions,
): Measure | undefined => {
  const at = secondNumber(text, first.end);
  if (at < 0) return undefined;
  const larger = findUnit(kind, text.slice(first.end, at).replace(/-$/, '').trim());
  const second = scanNumber(text, at, options.locale);
  if (larger === undefined || isFault(second)) return undefined;
  const smaller = findUnit(kind, text.slice(second.end).trim());
  if (smaller === undefined) return undefined;
  const step = (larger.times * smaller.over) / (larger.over * smaller.times);
  if (step <= 1 || second.value < 0 || !Number.isInteger(first.value)) return undefined;
  const down = first.value < 0 || Object.is(first.value, -0) ? -1 : 1;
  const inSmaller = first.value * step + down * second.value;
  return { number: inSmaller, digits: Math.min(first.digits + second.digits, 15), unit: smaller };
};

/**
 * Reads a number with its unit as a kind. The unit that another part of the same entry gave is taken where the
 * text has none.
 */
export const readMeasure = (
  whole: unknown,
  kind: Kind,
  options: ReadOptions,
  unitElsewhere?: Unit,
): Measure | Problem => {
  if (typeof whole !== 'string' || whole.length > longest) {
    return problem('QUANTITY_UNREADABLE', options, whole, { allowed: unitsAccepted(kind) });
  }
  const text = whole.trim();
  const unreadable = (): Problem =>
    problem('QUANTITY_UNREADABLE', options, whole, { allowed: unitsAccepted(kind) });
  let from = 0;
  while (from < text.length && !startsNumber(text, from)) from += 1;
  if (from === text.length) return unreadable();
  const scanned = scanNumber(text, from, options.locale);
  if (scanned === 'unreadable') return unreadable();
  if ('ambiguous' in scanned) {
    return problem('QUANTITY_AMBIGUOUS_NUMBER', options, whole, { allowed: scanned.ambiguous });
  }
  const before = text.slice(0, from).trim();
  // only a word may stand before a number, as in `Kv 1.2`; a second sign may not
  if (before !== '' && !/^[A-Za-z]/.test(before)) return unreadable();
  const behind = text.slice(scanned.end).trim();
  const name = before === '' ? behind : `${before} ${behind}`.trim();
  const unit = name === '' && unitElsewhere !== undefined ? unitElsewhere : findUnit(kind, name);
  if (unit !== undefined) return { number: scanned.value, digits: scanned.digits, unit };
  if (before === '' && compound.includes(kind)) {
    const two = readTwoPart(kind, text, scanned, options);
    if (two !== undefined) return two;
  }
  // words before the number that are no unit, or a second number behind: not one quantity
  const second = secondNumber(text, scanned.end) >= 0;
  if ((before !== '' || second) && kindsOfUnit(name).length === 0) return unreadable();
  return notAUnit(kind, name, whole, options);
};

export const isProblem = (read: Measure | Problem): read is Problem => 'code' in read;

/** The SI value, or what is physically wrong with it. */
export const checkedSi = (
  number: number,
  unit: Unit,
  kind: Kind,
  given: unknown,
  options: ReadOptions,
): number | Problem => {
  const value = inSi(number, unit);
  if (!Number.isFinite(value)) return problem('QUANTITY_NOT_FINITE', options, given);
  if (value < 0 && kind === 'temperature') return problem('QUANTITY_BELOW_ABSOLUTE_ZERO', options, given);
  if (value < 0 && kind === 'absolutePressure') return problem('QUANTITY_BELOW_VACUUM', options, given);
  return value;
};
