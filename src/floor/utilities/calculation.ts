import type { Book } from '../../book/index.ts';
import { valueAt } from '../../book/value-at.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { Note, Sheet, Value, Values } from '../../sheets/frame.ts';
import type { BookReader } from '../book-reader.ts';
import type { Origin } from '../finding.ts';
import type { Tracer } from '../tracer.ts';
import { assumedPlace, readPlace, type UncertainPlace } from '../uncertain-places.ts';
import { type Changed, type Graph, makeGraph, type Ref, type Step } from './graph.ts';
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

/**
 * One question put to the book and the sheets, with an account of what it rests on. Every sheet that it runs is kept as a
 * working for the reader and as a step of the floor's graph, by which intervals are found.
 */
export interface Calculation {
  readonly book: Book;
  /** Its reader, for what is computed outside the questions and for costly results that it keeps. */
  readonly reader: BookReader;
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
  /**
   * Runs a sheet; undefined where an input is unknown or the sheet refuses.
   *
   * Symbols  near  a cheaper way for a variation, where the sheet is too slow to be run at each
   */
  readonly run: <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: KnownInputs<I>,
    near?: (base: Step) => Step['compute'],
  ) => KnownOutputs<O> | undefined;
  /** A line of arithmetic between two sheets; `from` is where a reader may look. */
  readonly derive: (
    inputs: readonly (Known | undefined)[],
    compute: (...values: number[]) => number,
    from?: Origin,
  ) => Known | undefined;
  readonly note: (code: string, parts?: Note['parts']) => void;
  /** An intermediate result that several questions share, computed once a floor. */
  readonly once: <T>(key: string, make: (c: Calculation) => T) => T;
}

/** What a calculation met on its way. */
export interface Met {
  readonly notes: Note[];
  readonly refusals: Refusal[];
  readonly basis: Basis;
}

/** What an answer rests on. */
export interface Basis {
  /** Values that are not sure. */
  readonly places: Set<UncertainPlace>;
  /** Places for which a default was taken, and those that were wanted and are not there. */
  readonly assumed: Set<string>;
  readonly missing: Set<string>;
}

const gather = (into: Basis, from: Basis): void => {
  for (const place of from.places) into.places.add(place);
  for (const path of from.assumed) into.assumed.add(path);
  for (const path of from.missing) into.missing.add(path);
};

/** On which floor, with which format. */
export interface Where {
  readonly floor: number;
  readonly formatPath: string;
}

/** An intermediate result with what it rests on. */
interface Shared {
  readonly value: unknown;
  readonly met: Met;
}

/** Everything that the questions of one floor have in common. */
export interface Inquiry {
  readonly where: Where;
  readonly graph: Graph;
  /** Intermediate results of the floor. */
  readonly shared: Map<string, Shared>;
  /** What each uncertain value changes at both of its ends. */
  readonly varied: Map<UncertainPlace, readonly [Changed, Changed]>;
  /** Words and plain numbers of the book that were looked up. */
  readonly looked: Map<string, unknown>;
  /** Which places of the book are not sure, by path. */
  readonly uncertain: Map<string, UncertainPlace | undefined>;
  /** Keeps the workings; without it nothing is shown of what was computed. */
  readonly tracer?: Tracer;
}

export const inquiryOf = (where: Where, tracer?: Tracer): Inquiry => ({
  where,
  graph: makeGraph(),
  shared: new Map(),
  varied: new Map(),
  looked: new Map(),
  uncertain: new Map(),
  ...(tracer === undefined ? {} : { tracer }),
});

const keyOf = ({ floor, formatPath }: Where): string => `inquiry ${floor} ${formatPath}`;

/** The inquiry that is being made of a floor, for whoever asks of the same floor. */
export const keptInquiry = (reader: BookReader, where: Where): Inquiry | undefined =>
  reader.found.get(keyOf(where)) as Inquiry | undefined;

/** Begins an inquiry of a floor whose results the line's own questions share. */
export const beginInquiry = (reader: BookReader, where: Where, tracer: Tracer): Inquiry => {
  const inquiry = inquiryOf(where, tracer);
  reader.found.set(keyOf(where), inquiry);
  return inquiry;
};

/** What changes with one value of the book at both of its ends; found once for all questions. */
export const variedBy = ({ graph, varied }: Inquiry, place: UncertainPlace): readonly [Changed, Changed] => {
  let found = varied.get(place);
  if (found === undefined) {
    const [low, high] = place.ends;
    found = [graph.vary(place.path, low), graph.vary(place.path, high)];
    varied.set(place, found);
  }
  return found;
};

type Given = Known<number | string> | readonly (Known | undefined)[] | undefined;

const isList = (given: Given): given is readonly (Known | undefined)[] => Array.isArray(given);

/** Plain values of the inputs; undefined where one of them is not known. */
const valuesOf = (inputs: Readonly<Record<string, Given>>): Record<string, Value> | undefined => {
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

const knownOutputs = <O>(outputs: Values, step: number, working: number | undefined): KnownOutputs<O> => {
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

const refsOf = (given: Given): Step['refs'][string] =>
  isList(given) ? given.map((one) => one?.ref) : given?.ref;

/** A sheet as a step: only computed, its fields not looked at again. */
const stepOf =
  <I extends object, O extends object>(sheet: Sheet<I, O>) =>
  (inputs: Values): Values | undefined => {
    if ((sheet.check?.(inputs as I) ?? []).length > 0) return undefined;
    const outputs = sheet.compute(inputs as I) as Values;
    for (const name in outputs) if (Number.isNaN(outputs[name])) return undefined;
    return outputs;
  };

/** Inputs with the sheet's own defaults; undefined where one is missing. */
const withDefaults = (
  fields: Readonly<Record<string, { readonly assumed?: Value }>>,
  values: Values,
): Values | undefined => {
  const full: Record<string, Value> = {};
  for (const name in fields) {
    const value = values[name] ?? fields[name]!.assumed;
    if (value === undefined) return undefined;
    full[name] = value;
  }
  return full;
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

export const makeCalculation = (
  reader: BookReader,
  inquiry: Inquiry,
): Calculation & { readonly met: Met } => {
  const { where, graph, shared, tracer } = inquiry;
  const { floor, formatPath } = where;
  const basis: Basis = { places: new Set(), assumed: new Set(), missing: new Set() };
  const met: Met = { notes: [], refusals: [], basis };
  const doubt = (path: string, make: () => UncertainPlace | undefined): void => {
    if (!inquiry.uncertain.has(path)) inquiry.uncertain.set(path, make());
    const place = inquiry.uncertain.get(path);
    if (place !== undefined) basis.places.add(place);
  };
  const known = <T extends number | string>(value: T, path: string, assumed = false): Known<T> => {
    const from = assumed ? { path, assumed } : { path };
    return typeof value === 'number' ? { value, from, ref: { path } } : { value, from };
  };
  const number: Calculation['number'] = (path, kind) => {
    const value = reader.number(path, kind);
    if (value === undefined) return undefined;
    doubt(path, () => readPlace(path, reader.reading(path, kind)!));
    return known(value, path);
  };
  /** A default, marked as assumed; another in a variation of its place. */
  const takenAt = (path: string, assumed: number): Known => {
    basis.assumed.add(path);
    doubt(path, () => assumedPlace(path, assumed));
    return known(reader.changes.get(path) ?? assumed, path, true);
  };
  const lookUp = (path: string): unknown => {
    if (!inquiry.looked.has(path)) inquiry.looked.set(path, valueAt(reader.book, path));
    return inquiry.looked.get(path);
  };
  const word: Calculation['word'] = <T extends string>(path: string) => {
    const value = lookUp(path);
    return typeof value === 'string' ? known(value as T, path) : undefined;
  };
  const run: Calculation['run'] = <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: KnownInputs<I>,
    near?: (base: Step) => Step['compute'],
  ) => {
    const given = inputs as Readonly<Record<string, Given>>;
    const values = valuesOf(given);
    if (values === undefined) return undefined;
    const full = withDefaults(sheet.inputs as never, values);
    const compute = stepOf(sheet);
    let working: number | undefined;
    let outputs: Values | undefined;
    if (tracer === undefined) outputs = full === undefined ? undefined : compute(full);
    else {
      const kept = tracer.keep(sheet, values, originsBy(given));
      if (kept.ok) {
        working = kept.value;
        outputs = tracer.workings[kept.value]!.outputs;
      } else met.refusals.push(refusalOf(sheet.id, kept.problems, given));
    }
    if (outputs === undefined || full === undefined) return undefined;
    const refs: Record<string, Step['refs'][string]> = {};
    for (const name in given) refs[name] = refsOf(given[name]);
    const exact: Step = { inputs: full, refs, outputs, compute };
    const step = graph.add(near === undefined ? exact : { ...exact, compute: near(exact) });
    return knownOutputs<O>(outputs, step, working);
  };
  const note: Calculation['note'] = (code, parts) => {
    if (!met.notes.some((each) => each.code === code)) {
      met.notes.push(parts === undefined ? { code } : { code, parts });
    }
  };
  return {
    met,
    once: <T>(key: string, make: (c: Calculation) => T): T => {
      let found = shared.get(key);
      if (found === undefined) {
        const inner = makeCalculation(reader, inquiry);
        found = { value: make(inner), met: inner.met };
        shared.set(key, found);
      }
      gather(basis, found.met.basis);
      for (const each of found.met.notes) note(each.code, each.parts);
      met.refusals.push(...found.met.refusals.filter((each) => !met.refusals.includes(each)));
      return found.value as T;
    },
    derive: (inputs, compute, from) => {
      const values: number[] = [];
      for (const input of inputs) {
        if (input === undefined) return undefined;
        values.push(input.value);
      }
      const value = compute(...values);
      const step = graph.add({
        inputs: { values },
        refs: { values: inputs.map((input) => input?.ref) },
        outputs: { value },
        compute: (given) => ({ value: compute(...(given.values as readonly number[])) }),
      });
      return { value, from: from ?? inputs[0]?.from ?? nowhere, ref: { step, output: 'value' } };
    },
    book: reader.book,
    reader,
    floor,
    floorPath: `/floors/${floor}`,
    formatPath,
    number,
    needed: (path, kind) => {
      const found = number(path, kind);
      if (found === undefined) basis.missing.add(path);
      return found;
    },
    numberOr: (path, kind, assumed) => number(path, kind) ?? takenAt(path, assumed),
    plain: (path, otherwise) => {
      const value = lookUp(path);
      if (typeof value === 'number') return known(value, path);
      return otherwise === undefined ? undefined : known(otherwise, path, true);
    },
    word,
    neededWord: (path) => {
      const found = word<never>(path);
      if (found === undefined) basis.missing.add(path);
      return found;
    },
    wordOr: (path, assumed) => {
      const found = word<typeof assumed>(path);
      if (found !== undefined) return found;
      basis.assumed.add(path);
      return known(assumed, path, true);
    },
    miss: (path) => void basis.missing.add(path),
    assume: (path) => void basis.assumed.add(path),
    run,
    note,
  };
};
