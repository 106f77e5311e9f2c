import type { Value, Values } from '../../sheets/frame.ts';

/** What a number rests on: a value of the book, or what came out of a step of the calculation. */
export type Ref =
  | { readonly path: string }
  | { readonly step: number; readonly output: string; readonly item?: number };

/** An input with what it rests on; nothing for what never varies. */
export interface Rests {
  readonly ref?: Ref;
}

type On = Rests | readonly (Rests | undefined)[] | undefined;

/** One step of a calculation: a sheet, or a line of arithmetic between two of them. */
export interface Step {
  readonly inputs: Values;
  /** What each input rests on; one a member for a list. */
  readonly on: Readonly<Record<string, On>>;
  readonly outputs: Values;
  /** Undefined where it can't be computed with these inputs. */
  readonly compute: (inputs: Values) => Values | undefined;
}

/** Outputs of the steps that another value changes; undefined where a step can't be computed with it. */
export type Changed = ReadonlyMap<number, Values | undefined>;

/** What one value of the book changes among the first so many steps. */
export interface Variation {
  readonly changed: Changed;
  readonly looked: number;
}

/** The steps of a calculation in the order in which they were made, each after what it rests on. */
export interface Graph {
  readonly add: (step: Step) => number;
  /** How many steps there are by now. */
  readonly size: () => number;
  /**
   * Puts one value of the book to another and computes what rests on it.
   *
   * Symbols  variation  the same one, looked at before there were as many steps: it goes on with those that came since
   * Returns  the steps that change, of those that there are by now
   * Assumes  the same steps: a choice that the calculation made between two ways stands as it was made
   * Cost     the steps that rest on the value, each once
   */
  readonly vary: (path: string, value: number, variation?: Variation) => Variation;
  /** A number after a variation; undefined where it can't be computed. */
  readonly after: (changed: Changed, ref: Ref | undefined, before: number) => number | undefined;
}

const isList = (on: On): on is readonly (Rests | undefined)[] => Array.isArray(on);

const memberOf = (value: Value | undefined, item: number | undefined): number | undefined => {
  if (typeof value === 'number') return value;
  const found = typeof value === 'object' && item !== undefined ? value[item] : undefined;
  return found;
};

const sameValues = (a: Values, b: Values): boolean => {
  for (const name in a) {
    const one = a[name];
    const other = b[name];
    if (one === other) continue;
    if (typeof one !== 'object' || typeof other !== 'object') return false;
    if (one.some((value, i) => value !== other[i])) return false;
  }
  return true;
};

export const makeGraph = (): Graph => {
  const steps: Step[] = [];
  /** Steps that rest on each place of the book, and on each step. */
  const readers = new Map<string, number[]>();
  const dependents: number[][] = [];
  /** Steps that a variation has still to compute; one list for all of them, since there are hundreds. */
  let marked = new Uint8Array(0);

  const note = (ref: Ref | undefined, step: number): void => {
    if (ref === undefined) return;
    if ('step' in ref) {
      dependents[ref.step]!.push(step);
      return;
    }
    const found = readers.get(ref.path);
    if (found === undefined) readers.set(ref.path, [step]);
    else found.push(step);
  };

  /** Another value for an input, or nothing where it stays; `null` where it is lost. */
  const other = (
    ref: Ref | undefined,
    changed: Map<number, Values | undefined>,
    path: string,
    value: number,
  ): number | undefined | null => {
    if (ref === undefined) return undefined;
    if ('path' in ref) return ref.path === path ? value : undefined;
    if (!changed.has(ref.step)) return undefined;
    return memberOf(changed.get(ref.step)?.[ref.output], ref.item) ?? null;
  };

  /** Inputs with what has changed put in; undefined where nothing has, `null` where one is lost. */
  const inputsAfter = (
    { inputs, on }: Step,
    changed: Map<number, Values | undefined>,
    path: string,
    value: number,
  ): Values | undefined | null => {
    let next: Record<string, Value> | undefined;
    for (const name in on) {
      const one = on[name];
      if (!isList(one)) {
        const now = other(one?.ref, changed, path, value);
        if (now === null) return null;
        if (now !== undefined) {
          next ??= { ...inputs };
          next[name] = now;
        }
        continue;
      }
      let list: number[] | undefined;
      for (let i = 0; i < one.length; i++) {
        const now = other(one[i]?.ref, changed, path, value);
        if (now === null) return null;
        if (now === undefined) continue;
        list ??= [...(inputs[name] as readonly number[])];
        list[i] = now;
      }
      if (list !== undefined) {
        next ??= { ...inputs };
        next[name] = list;
      }
    }
    return next;
  };

  return {
    add: (step) => {
      const index = steps.length;
      steps.push(step);
      dependents.push([]);
      for (const name in step.on) {
        const one = step.on[name];
        if (isList(one)) for (const each of one) note(each?.ref, index);
        else note(one?.ref, index);
      }
      return index;
    },
    size: () => steps.length,
    vary: (path, value, variation = { changed: new Map(), looked: 0 }) => {
      const from = variation.looked;
      const changed = new Map(variation.changed);
      if (marked.length < steps.length) marked = new Uint8Array(2 * steps.length);
      else marked.fill(0, from, steps.length);
      let next = steps.length;
      const mark = (step: number): void => {
        if (step < from) return;
        marked[step] = 1;
        if (step < next) next = step;
      };
      for (const step of readers.get(path) ?? []) mark(step);
      for (const before of changed.keys()) for (const step of dependents[before]!) mark(step);
      for (let i = next; i < steps.length; i++) {
        if (marked[i] === 0) continue;
        const step = steps[i]!;
        const inputs = inputsAfter(step, changed, path, value);
        if (inputs === undefined) continue;
        const outputs = inputs === null ? undefined : step.compute(inputs);
        if (outputs !== undefined && sameValues(outputs, step.outputs)) continue;
        changed.set(i, outputs);
        for (const dependent of dependents[i]!) marked[dependent] = 1;
      }
      return { changed, looked: steps.length };
    },
    after: (changed, ref, before) => {
      if (ref === undefined || 'path' in ref || !changed.has(ref.step)) return before;
      return memberOf(changed.get(ref.step)?.[ref.output], ref.item);
    },
  };
};
