import type { Book } from '../../book/index.ts';
import { valueAt } from '../../book/value-at.ts';
import type { Kind } from '../../quantity/kinds.ts';
import { type Note, runSheet, type Sheet, type Value, type Values } from '../../sheets/frame.ts';
import { type BookReader, gather, touches } from '../book-reader.ts';
import type { Origin } from '../finding.ts';
import type { Tracer } from '../tracer.ts';
import type { Refusal } from './utility-finding.ts';

/** A value with where it came from. */
export interface Known<T extends number | string = number> {
  readonly value: T;
  readonly from: Origin;
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

/**
 * One question put to the book and the sheets, with an account of what it rests on. A traced calculation keeps every
 * sheet that it ran as a working; a plain one only computes: it is what an interval is found with.
 */
export interface Calculation {
  readonly book: Book;
  /** Index and place of the floor. */
  readonly floor: number;
  readonly floorPath: string;
  readonly formatPath: string;
  /** The number at a place; undefined where nothing stands. */
  readonly number: (path: string, kind: Kind) => Known | undefined;
  /** The number at a place; its absence makes the answer unknown. */
  readonly needed: (path: string, kind: Kind) => Known | undefined;
  /** The number at a place, or a default that is marked as assumed. */
  readonly numberOr: (path: string, kind: Kind, assumed: number) => Known;
  /** A plain number of the book: a count, a service factor. */
  readonly plain: (path: string, otherwise?: number) => Known | undefined;
  /** A word of the book, one of a few. */
  readonly word: <T extends string>(path: string) => Known<T> | undefined;
  readonly neededWord: <T extends string>(path: string) => Known<T> | undefined;
  readonly wordOr: <T extends string>(path: string, assumed: T) => Known<T>;
  readonly miss: (path: string) => void;
  readonly assume: (path: string) => void;
  /** Runs a sheet; undefined where an input is unknown or the sheet refuses. */
  readonly run: <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: KnownInputs<I>,
  ) => KnownOutputs<O> | undefined;
  readonly note: (code: string, parts?: Note['parts']) => void;
  /**
   * An intermediate result that several questions share, computed once a floor; a variation computes it anew only where
   * it rests on the value that is varied.
   */
  readonly once: <T>(key: string, make: (c: Calculation) => T) => T;
  /** Costly results of this book, as `BookReader` keeps them. */
  readonly found: Map<string, unknown>;
  /** The place whose value is another in this variation; absent in the calculation that is shown. */
  readonly varied?: string;
}

/** What a traced calculation met on its way. */
export interface Met {
  readonly notes: Note[];
  readonly refusals: Refusal[];
}

/** On which floor, with which format. */
export interface Where {
  readonly floor: number;
  readonly formatPath: string;
}

interface Shared {
  readonly value: unknown;
  readonly reader: BookReader;
  readonly met: Met;
}

/** Intermediate results of one floor as it stands, and of each of its variations. */
export interface SharedResults {
  readonly base: Map<string, Shared>;
  readonly varied: Map<string, Map<string, unknown>>;
}

export const sharedResults = (): SharedResults => ({ base: new Map(), varied: new Map() });

/** Everything that the questions of one floor have in common. */
export interface Ground {
  readonly where: Where;
  readonly shared: SharedResults;
  /** Keeps the workings; without it nothing is shown of what was computed. */
  readonly tracer?: Tracer;
}

/** One place of the book that is put to another value. */
export interface Variation {
  readonly path: string;
  readonly value: number;
}

type Given = Known<number | string> | readonly (Known | undefined)[] | undefined;

const isList = (given: Given): given is readonly (Known | undefined)[] => Array.isArray(given);

/** Plain values of the inputs; undefined where one of them is not known. */
const valuesOf = (inputs: Readonly<Record<string, Given>>): Record<string, Value> | undefined => {
  const values: Record<string, Value> = {};
  for (const [name, given] of Object.entries(inputs)) {
    if (given === undefined) return undefined;
    if (!isList(given)) {
      values[name] = given.value;
      continue;
    }
    const list: number[] = [];
    for (const one of given) {
      if (one === undefined) return undefined;
      list.push(one.value);
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

const knownOutputs = <O>(outputs: Values, from: (output: string) => Origin): KnownOutputs<O> =>
  Object.fromEntries(
    Object.entries(outputs).map(([name, value]) => [
      name,
      typeof value === 'object'
        ? value.map((one) => ({ value: one, from: from(name) }))
        : { value, from: from(name) },
    ]),
  ) as KnownOutputs<O>;

const resultsFor = (varied: SharedResults['varied'], { path, value }: Variation): Map<string, unknown> => {
  const key = `${path} ${value}`;
  const found = varied.get(key) ?? new Map<string, unknown>();
  varied.set(key, found);
  return found;
};

const nowhere: Origin = { path: '' };

const refusalOf = (
  sheet: string,
  problems: Refusal['problems'],
  inputs: Readonly<Record<string, Given>>,
): Refusal => ({
  sheet,
  problems,
  places: [
    ...new Set(
      problems.flatMap(({ path }) =>
        originsOf(inputs[path ?? '']).flatMap((from) => ('path' in from ? [from.path] : [])),
      ),
    ),
  ],
});

/**
 * Symbols  variation  the book with one value changed: sheets are only computed, their fields not looked at again;
 *                     without it each sheet is kept as a working
 */
export const makeCalculation = (
  reader: BookReader,
  ground: Ground,
  variation?: Variation,
): Calculation & { readonly met: Met } => {
  const { floor, formatPath } = ground.where;
  const tracer = variation === undefined ? ground.tracer : undefined;
  const met: Met = { notes: [], refusals: [] };
  const known = <T extends number | string>(value: T, path: string, assumed = false): Known<T> => ({
    value,
    from: assumed ? { path, assumed } : { path },
  });
  const number: Calculation['number'] = (path, kind) => {
    const value = reader.number(path, kind);
    return value === undefined ? undefined : known(value, path);
  };
  const word: Calculation['word'] = <T extends string>(path: string) => {
    const value = valueAt(reader.book, path);
    return typeof value === 'string' ? known(value as T, path) : undefined;
  };
  const run: Calculation['run'] = <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: KnownInputs<I>,
  ) => {
    const given = inputs as Readonly<Record<string, Given>>;
    const values = valuesOf(given);
    if (values === undefined) return undefined;
    if (tracer === undefined) {
      const full: Record<string, Value> = {};
      for (const [name, field] of Object.entries(sheet.inputs) as [string, { assumed?: Value }][]) {
        const value = values[name] ?? field.assumed;
        if (value === undefined) return undefined;
        full[name] = value;
      }
      if ((sheet.check?.(full as I) ?? []).length > 0) return undefined;
      const outputs = sheet.compute(full as I) as Values;
      for (const value of Object.values(outputs)) if (Number.isNaN(value)) return undefined;
      return knownOutputs<O>(outputs, () => nowhere);
    }
    const working = tracer.trace(
      sheet,
      Object.fromEntries(
        Object.entries(given).map(([name, one]) => [
          name,
          { value: values[name]!, from: isList(one) ? one.map((each) => each?.from) : one!.from },
        ]),
      ) as Parameters<typeof tracer.trace<I, O>>[1],
    );
    if (working !== undefined) {
      return knownOutputs<O>(tracer.workings[working]!.outputs, (output) => ({ working, output }));
    }
    const result = runSheet(sheet, values);
    if (!result.ok) met.refusals.push(refusalOf(sheet.id, result.problems, given));
    return undefined;
  };
  const note: Calculation['note'] = (code, parts) => {
    if (!met.notes.some((each) => each.code === code)) {
      met.notes.push(parts === undefined ? { code } : { code, parts });
    }
  };
  const { base, varied } = ground.shared;
  const here = variation === undefined ? undefined : resultsFor(varied, variation);
  const calculation: Calculation & { readonly met: Met } = {
    met,
    found: reader.found,
    ...(variation === undefined ? {} : { varied: variation.path }),
    once: <T>(key: string, make: (c: Calculation) => T): T => {
      if (here !== undefined) {
        if (here.has(key)) return here.get(key) as T;
        const before = base.get(key);
        if (before !== undefined && !touches(before.reader, variation!.path)) return before.value as T;
        const value = make(calculation);
        here.set(key, value);
        return value;
      }
      let found = base.get(key);
      if (found === undefined) {
        const scope = reader.scope();
        const inner = makeCalculation(scope, ground);
        found = { value: make(inner), reader: scope, met: inner.met };
        base.set(key, found);
      }
      gather(reader, [found.reader]);
      for (const each of found.met.notes) note(each.code, each.parts);
      met.refusals.push(...found.met.refusals.filter((each) => !met.refusals.includes(each)));
      return found.value as T;
    },
    book: reader.book,
    floor,
    floorPath: `/floors/${floor}`,
    formatPath,
    number,
    needed: (path, kind) => {
      const found = number(path, kind);
      if (found === undefined) reader.miss(path);
      return found;
    },
    numberOr: (path, kind, assumed) =>
      number(path, kind) ?? known(reader.numberOr(path, kind, assumed), path, true),
    plain: (path, otherwise) => {
      const value = valueAt(reader.book, path);
      if (typeof value === 'number') return known(value, path);
      return otherwise === undefined ? undefined : known(otherwise, path, true);
    },
    word,
    neededWord: (path) => {
      const found = word<never>(path);
      if (found === undefined) reader.miss(path);
      return found;
    },
    wordOr: (path, assumed) => {
      const found = word<typeof assumed>(path);
      if (found !== undefined) return found;
      reader.assume(path);
      return known(assumed, path, true);
    },
    miss: reader.miss,
    assume: (path) => reader.assume(path),
    run,
    note,
  };
  return calculation;
};
