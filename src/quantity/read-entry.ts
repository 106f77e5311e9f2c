import { type Kind, type Si, si } from './kinds.ts';
import { problem, type ReadOptions } from './measure.ts';
import { type Entry, parseEntry, parseRange, parseSpread } from './parse-entry.ts';
import { accept, type Problem, type Result, refuse } from './problem.ts';
import { findUnit } from './unit-lookup.ts';

export const standings = ['measured', 'stated', 'assumed'] as const;
export type Standing = (typeof standings)[number];

/** A quantity of a book, ready to compute with. */
export interface Reading<K extends Kind> {
  readonly value: Si<K>;
  /** Ends at 95 % of a spread, hard ends of a range; both the value where it is exact. */
  readonly low: Si<K>;
  readonly high: Si<K>;
  /** Standard deviation in the SI unit: of a normal spread, or of an even one over a range. */
  readonly sd?: number;
  readonly shape: 'exact' | 'spread' | 'range';
  readonly standing: Standing;
  /** Canonical id of the unit that was typed. */
  readonly unit: string;
  readonly digits: number;
  readonly by?: string;
  readonly on?: string;
}

/** The form in a book. */
export type BookQuantity =
  | string
  | {
      readonly value: string | readonly [string, string];
      readonly spread?: string;
      readonly standing?: Standing;
      readonly by?: string;
      readonly on?: string;
    };

/** Half width of 95 % of a normal distribution, in standard deviations. */
const normal95 = 1.959963984540054;

interface Origin {
  readonly standing: Standing;
  readonly by?: string;
  readonly on?: string;
}

const reading = <K extends Kind>(
  kind: K,
  entry: Entry<K>,
  origin: Origin,
  options: ReadOptions,
  given: unknown,
): Result<Reading<K>> => {
  const { value, unit, digits } = entry;
  if (entry.low !== undefined && entry.high !== undefined && entry.low < entry.high) {
    // an even chance between hard ends: JCGM 100:2008 (GUM), 4.3.7, memory
    const sd = (entry.high / 2 - entry.low / 2) / Math.sqrt(3);
    return accept({ value, low: entry.low, high: entry.high, sd, shape: 'range', unit, digits, ...origin });
  }
  const spread = entry.spread ?? 0;
  if (spread === 0)
    return accept({ value, low: value, high: value, shape: 'exact', unit, digits, ...origin });
  const [low, high] = [value - spread, value + spread];
  if (low < 0 && kind === 'temperature')
    return refuse(problem('QUANTITY_BELOW_ABSOLUTE_ZERO', options, given));
  if (low < 0 && kind === 'absolutePressure') return refuse(problem('QUANTITY_BELOW_VACUUM', options, given));
  const sd = spread / normal95;
  return accept({
    value,
    low: si(kind, low),
    high: si(kind, high),
    sd,
    shape: 'spread',
    unit,
    digits,
    ...origin,
  });
};

const isText = (given: unknown): given is string => typeof given === 'string';
const isOptionalText = (given: unknown): given is string | undefined => given === undefined || isText(given);

const forms = ['text', '{ value, spread, standing, by, on }', '{ value: [low, high] }'] as const;

/** A list or an object is named by its kind, so that a deep or circular one is never written out. */
const named = (given: unknown): unknown =>
  Array.isArray(given)
    ? 'list'
    : typeof given === 'object' && given !== null
      ? 'object'
      : (given ?? String(given));

/** The entry of `{ value, spread }`. */
const entryOf = <K extends Kind>(
  value: unknown,
  spread: unknown,
  kind: K,
  options: ReadOptions,
): Result<Entry<K>> => {
  const at = (field: string): ReadOptions => ({ ...options, path: `${options.path}/${field}` });
  const formless = (field: string, given: unknown): Problem =>
    problem('QUANTITY_FORM', at(field), named(given), { allowed: forms });
  if (!isOptionalText(spread)) return refuse(formless('spread', spread));
  if (Array.isArray(value)) {
    const [low, high] = value as unknown[];
    if (value.length !== 2 || !isText(low) || !isText(high)) return refuse(formless('value', value));
    if (spread !== undefined) return refuse(problem('QUANTITY_SPREAD_ON_RANGE', at('spread'), spread));
    return parseRange([low, high], kind, at('value'), `${low} … ${high}`);
  }
  if (!isText(value)) return refuse(formless('value', value));
  const alone = parseEntry(value, kind, at('value'));
  if (spread === undefined || !alone.ok) return alone;
  if (alone.value.spread !== undefined) return refuse(problem('QUANTITY_SPREAD_TWICE', at('spread'), spread));
  if (alone.value.low !== undefined) return refuse(problem('QUANTITY_SPREAD_ON_RANGE', at('spread'), spread));
  return parseSpread([value, spread], kind, at('value'), at('spread'));
};

/**
 * A quantity in the form of a book: text, or `{ value, spread?, standing?, by?, on? }` where value may be a pair of
 * texts with hard limits.
 *
 * Method   text is read by `parseEntry`; a plain number is taken only where the kind has a bare unit (count, ratio)
 * Returns  value with its ends, standard deviation, shape, standing (`stated` unless said) and unit
 * Problems those of `parseEntry`, all at once; QUANTITY_FORM, QUANTITY_STANDING, QUANTITY_SPREAD_TWICE,
 *          QUANTITY_SPREAD_ON_RANGE, with the path of the field
 * Assumes  a spread is normal and holds the truth in 95 of 100; a range is even
 * Cost     O(length)
 */
export const readEntry = <K extends Kind>(
  given: unknown,
  kind: K,
  options: ReadOptions,
): Result<Reading<K>> => {
  const formless = (): Result<never> =>
    refuse(problem('QUANTITY_FORM', options, named(given), { allowed: forms }));
  if (isText(given)) {
    const entry = parseEntry(given, kind, options);
    return entry.ok ? reading(kind, entry.value, { standing: 'stated' }, options, given) : entry;
  }
  if (typeof given === 'number' && findUnit(kind, '') !== undefined) {
    if (!Number.isFinite(given)) return refuse(problem('QUANTITY_NOT_FINITE', options, String(given)));
    const entry = { value: si(kind, given), unit: '', digits: 15 };
    return reading(kind, entry, { standing: 'stated' }, options, given);
  }
  if (typeof given !== 'object' || given === null || Array.isArray(given)) return formless();
  const { value, spread, standing = 'stated', by, on } = given as Record<string, unknown>;
  if (value === undefined) return formless();
  const problems: Problem[] = [];
  const known = standings.find((each) => each === standing);
  const at = (field: string): ReadOptions => ({ ...options, path: `${options.path}/${field}` });
  if (known === undefined) {
    problems.push(problem('QUANTITY_STANDING', at('standing'), named(standing), { allowed: standings }));
  }
  if (!isOptionalText(by))
    problems.push(problem('QUANTITY_FORM', at('by'), named(by), { allowed: ['text'] }));
  if (!isOptionalText(on))
    problems.push(problem('QUANTITY_FORM', at('on'), named(on), { allowed: ['text'] }));
  const entry = entryOf(value, spread, kind, options);
  if (!entry.ok) problems.push(...entry.problems);
  if (problems.length > 0 || !entry.ok || known === undefined) return refuse(...problems);
  return reading(
    kind,
    entry.value,
    {
      standing: known,
      ...(isText(by) ? { by } : {}),
      ...(isText(on) ? { on } : {}),
    },
    options,
    isText(spread) ? `${value} ± ${spread}` : value,
  );
};
