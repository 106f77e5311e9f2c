import type { Book } from '../../book/index.ts';
import { valueAt } from '../../book/value-at.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { Note, Sheet, Value, Values } from '../../sheets/frame.ts';
import type { BookReader } from '../book-reader.ts';
import type { Origin } from '../finding.ts';
import { assumedPlace, readPlace, type UncertainPlace } from '../uncertain-places.ts';
import type { Step } from './graph.ts';
import { type Basis, gather, type Inquiry, type Met } from './inquiry.ts';
import {
  type Given,
  type Known,
  type KnownInputs,
  type KnownOutputs,
  knownOutputs,
  nowhere,
  originsLater,
  refusalOf,
  valuesOf,
} from './known.ts';

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
  /**
   * Asks something besides, on this floor or another: it counts with what it rests on, but what it misses and notes is its
   * own.
   */
  readonly aside: <T>(floor: number, ask: (c: Calculation) => T) => T;
  /** A number found outside of the questions with its ends, under the place that stands for all that it rests on. */
  readonly given: (
    path: string,
    found: { readonly value: number; readonly low?: number; readonly high?: number; readonly from: Origin },
  ) => Known;
  /** An intermediate result that several questions share, computed once a floor. */
  readonly once: <T>(key: string, make: (c: Calculation) => T) => T;
}

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

export const makeCalculation = (
  reader: BookReader,
  inquiry: Inquiry,
): Calculation & { readonly met: Met } => {
  const { where, graph, shared, tracer } = inquiry;
  const { floor, formatPath } = where;
  const basis: Basis = { places: new Set(), assumed: new Set(), missing: new Set() };
  const met: Met = { notes: [], refusals: [], basis };
  const doubt = (place: UncertainPlace | undefined): void => {
    if (place !== undefined) basis.places.add(place);
  };
  const known = <T extends number | string>(value: T, path: string, assumed = false): Known<T> => {
    const from = assumed ? { path, assumed } : { path };
    return typeof value === 'number' ? { value, from, ref: { path } } : { value, from };
  };
  const number: Calculation['number'] = (path, kind) => {
    let found = inquiry.numbers.get(path);
    if (found === undefined) {
      const value = reader.number(path, kind);
      found =
        value === undefined
          ? {}
          : { known: known(value, path), place: readPlace(path, reader.reading(path, kind)!) };
      inquiry.numbers.set(path, found);
    }
    doubt(found.place);
    return found.known;
  };
  /** A default, marked as assumed; another in a variation of its place. */
  const takenAt = (path: string, assumed: number): Known => {
    basis.assumed.add(path);
    if (!inquiry.defaults.has(path)) inquiry.defaults.set(path, assumedPlace(path, assumed));
    doubt(inquiry.defaults.get(path));
    return known(reader.changes.get(path) ?? assumed, path, true);
  };
  const lookUp = (path: string): unknown => {
    if (!inquiry.looked.has(path)) inquiry.looked.set(path, valueAt(reader.book, path));
    return inquiry.looked.get(path);
  };
  /** A quantity as a person wrote it. */
  const typedAt = (path: string): string | undefined => {
    const stands = lookUp(path);
    const text = typeof stands === 'object' && stands !== null && 'value' in stands ? stands.value : stands;
    return typeof text === 'string' ? text : undefined;
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
    const compute = stepOf(sheet);
    let working: number | undefined;
    let full: Values | undefined;
    let outputs: Values | undefined;
    if (tracer === undefined) {
      full = withDefaults(sheet.inputs as never, values);
      outputs = full === undefined ? undefined : compute(full);
    } else {
      const kept = tracer.keep(sheet, values, originsLater(given));
      if (kept.ok) ({ working, inputs: full, outputs } = kept.value);
      else met.refusals.push(refusalOf(sheet.id, kept.problems, given, typedAt));
    }
    if (outputs === undefined || full === undefined) return undefined;
    const exact: Step = { inputs: full, on: given, outputs, compute };
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
    aside: (other, ask) => {
      const own =
        other === floor ? inquiry : { ...inquiry, where: { ...where, floor: other }, shared: new Map() };
      const inner = makeCalculation(reader, own);
      const value = ask(inner);
      for (const place of inner.met.basis.places) basis.places.add(place);
      for (const path of inner.met.basis.assumed) basis.assumed.add(path);
      return value;
    },
    given: (path, { value, low, high, from }) => {
      let found = inquiry.numbers.get(path);
      if (found === undefined) {
        found = {
          known: { value, from, ref: { path } },
          ...(low === undefined || high === undefined
            ? {}
            : { place: { path, ends: [low, high], doubt: 'stated' } }),
        };
        inquiry.numbers.set(path, found);
      }
      doubt(found.place);
      return found.known!;
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
        on: { values: inputs },
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
