import type { Value, Values } from '../../sheets/frame.ts';
import type { Origin } from '../finding.ts';
import type { Ref } from './graph.ts';
import type { Refusal } from './utility-finding.ts';

/** A value with where it came from, to be shown, and what it rests on, to be varied. */
export interface Known<T extends number | string = number> {
  readonly value: T;
  readonly from: Origin;
  /** Absent: it stays as it is whatever is varied. */
  readonly ref?: Ref;
}

/** Inputs of a sheet: a key that is left out takes the sheet's own default, one that is undefined makes all unknown. */
export type KnownInputs<I> = {
  readonly [K in keyof I]?: I[K] extends readonly number[]
    ? readonly (Known | undefined)[] | undefined
    : I[K] extends number
      ? Known | undefined
      : Known<I[K] & string> | undefined;
};

export type KnownOutputs<O> = {
  readonly [K in keyof O]: O[K] extends readonly number[]
    ? readonly Known[]
    : O[K] extends number
      ? Known
      : Known<O[K] & string>;
};

/** Of what nobody can look at. */
export const nowhere: Origin = { path: '' };

/** An input of a sheet, of a kind that is only known once it runs. */
export type Given = Known<number | string> | readonly (Known | undefined)[] | undefined;

const isList = (given: Given): given is readonly (Known | undefined)[] => Array.isArray(given);

/** Plain values of the inputs; undefined where one of them is not known. */
export const valuesOf = (inputs: Readonly<Record<string, Given>>): Record<string, Value> | undefined => {
  const values: Record<string, Value> = {};
  for (const name in inputs) {
    const given = inputs[name];
    if (given === undefined) return undefined;
    if (!isList(given)) {
      values[name] = given.value;
      continue;
    }
    const list = new Array<number>(given.length);
    for (let i = 0; i < given.length; i++) {
      const one = given[i];
      if (one === undefined) return undefined;
      list[i] = one.value;
    }
    values[name] = list;
  }
  return values;
};

const originsOf = (given: Given): readonly Origin[] =>
  given === undefined
    ? []
    : isList(given)
      ? given.flatMap((one) => (one === undefined ? [] : [one.from]))
      : [given.from];

/** Origins by input, a list's members each on its own: as a working keeps them. */
const originsBy = (inputs: Readonly<Record<string, Given>>): Record<string, Origin> => {
  const from: Record<string, Origin> = {};
  for (const name in inputs) {
    const given = inputs[name];
    if (isList(given)) {
      for (let i = 0; i < given.length; i++)
        if (given[i] !== undefined) from[`${name}.${i}`] = given[i]!.from;
    } else if (given !== undefined) from[name] = given.from;
  }
  return from;
};

/** The same when somebody asks; it holds on to nothing but the inputs. */
export const originsLater = (inputs: Readonly<Record<string, Given>>) => (): Record<string, Origin> =>
  originsBy(inputs);

/** What came out of a step, and of the working where one was kept. */
export const knownOutputs = <O>(
  outputs: Values,
  step: number,
  working: number | undefined,
): KnownOutputs<O> => {
  const known: Record<string, unknown> = {};
  for (const output in outputs) {
    const value = outputs[output]!;
    const from = working === undefined ? nowhere : { working, output };
    known[output] =
      typeof value === 'object'
        ? value.map((one, item) => ({ value: one, from, ref: { step, output, item } }))
        : { value, from, ref: { step, output } };
  }
  return known as KnownOutputs<O>;
};

/** Place of the book whose value went into an input as it stands there. */
const placeOf = (given: Given): string | undefined => {
  const [from, more] = originsOf(given);
  return from !== undefined && more === undefined && 'path' in from && from.assumed !== true
    ? from.path
    : undefined;
};

/**
 * A sheet that would not take what it was given, with the places that it came from.
 *
 * Symbols  typed  what a person wrote at a place: a refused number is told as that
 */
export const refusalOf = (
  sheet: string,
  problems: Refusal['problems'],
  inputs: Readonly<Record<string, Given>>,
  typed: (path: string) => string | undefined,
): Refusal => ({
  sheet,
  problems: problems.map((problem) => {
    const place = typeof problem.given === 'number' ? placeOf(inputs[problem.path]) : undefined;
    const text = place === undefined ? undefined : typed(place);
    return text === undefined ? problem : { ...problem, given: text };
  }),
  places: [
    ...new Set(
      problems.flatMap(({ path }) =>
        originsOf(inputs[path ?? '']).flatMap((from) => ('path' in from ? [from.path] : [])),
      ),
    ),
  ],
});
