import { accept, type Result } from '../quantity/problem.ts';
import { notesOf, putThrough, type Sheet, type Values } from '../sheets/frame.ts';
import type { Origin, Working } from './finding.ts';

/** An input of a sheet with where it came from; for a list one origin a member, or one for all. */
export interface Given {
  readonly value: number | readonly number[] | string;
  readonly from?: Origin | readonly (Origin | undefined)[];
}

/** What was kept of a sheet that took its inputs. */
export interface Kept {
  /** Its number among the workings. */
  readonly working: number;
  /** With the sheet's own defaults. */
  readonly inputs: Values;
  readonly outputs: Values;
}

/** Runs sheets and keeps what went in and came out. */
export interface Tracer {
  /**
   * Puts inputs through a sheet.
   *
   * Symbols  solved  the value that iteration found for the named output; the difference stands as the residual
   * Returns  number of the working, or undefined where the sheet refuses the inputs: there is then nothing to show
   */
  readonly trace: <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: { readonly [K in keyof I]?: Given | undefined },
    solved?: { readonly output: keyof O & string; readonly value: number },
  ) => number | undefined;
  /** The same for plain values; the problems where the sheet refuses them. */
  readonly keep: <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    values: Values,
    from: () => Working['from'],
  ) => Result<Kept>;
  /** Made when they are looked at: notes and origins are for a reader. */
  readonly workings: readonly Working[];
  /** One of them, as far as it is kept by now. */
  readonly workingAt: (working: number) => Working | undefined;
  readonly output: (working: number | undefined, output: string) => number | undefined;
  /** Workings by now, with those before its first. */
  readonly size: () => number;
  /** All that is kept by now, for another tracer to take in. */
  readonly whole: Trace;
  /** Takes in what another has kept, behind its own; gives what must be added to the numbers that the other gave. */
  readonly takeIn: (trace: Trace) => number;
}

const isList = (from: Given['from']): from is readonly (Origin | undefined)[] => Array.isArray(from);

/** Origins by input, those of a list's members each on its own. */
const originsBy = (inputs: Readonly<Record<string, Given | undefined>>): Record<string, Origin> => {
  const from: Record<string, Origin> = {};
  for (const [name, given] of Object.entries(inputs)) {
    if (given === undefined) continue;
    if (isList(given.from)) {
      for (const [i, origin] of given.from.entries()) if (origin !== undefined) from[`${name}.${i}`] = origin;
    } else if (given.from !== undefined) from[name] = given.from;
  }
  return from;
};

/** A working as it was kept, of which nothing is made that only its reader wants. */
interface Draft {
  readonly sheet: Pick<Sheet, 'id' | 'version' | 'limits'>;
  readonly given: Values;
  readonly inputs: Values;
  readonly outputs: Values;
  readonly from: () => Working['from'];
  readonly residual?: number;
}

/** Sheets that were run, one after the other, numbered from the first. */
export interface Trace {
  readonly first: number;
  readonly drafts: readonly Draft[];
}

/** A draft in the place that it was taken in at. */
interface Placed {
  readonly draft: Draft;
  /** Number from which on its origins name others of its own trace, and what that has been moved by. */
  readonly first: number;
  readonly by: number;
}

/** Where an input came from, when workings from a number on have been moved. */
export const movedOrigin = (origin: Origin, first: number, by: number): Origin =>
  by !== 0 && 'working' in origin && origin.working >= first
    ? { ...origin, working: origin.working + by }
    : origin;

const workingOf = ({ draft, first, by }: Placed): Working => {
  const { sheet, given, inputs, outputs, from, residual } = draft;
  return {
    sheet: sheet.id,
    version: sheet.version,
    inputs: given,
    outputs,
    notes: notesOf(sheet, { inputs, outputs }),
    from: Object.fromEntries(
      Object.entries(from()).map(([name, origin]) => [name, movedOrigin(origin, first, by)]),
    ),
    ...(residual === undefined ? {} : { residual }),
  };
};

/**
 * A tracer of its own.
 *
 * Symbols  first  number of its first working: those before it are another's, which may be named as an origin
 */
export const makeTracer = (first = 0): Tracer => {
  const placed: Placed[] = [];
  const workings: Working[] = [];
  const keep = <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    values: Values,
    from: () => Working['from'],
    solved?: { readonly output: string; readonly value: number },
  ): Result<Kept> => {
    const ran = putThrough(sheet, values);
    if (!ran.ok) return ran;
    const { inputs } = ran.value;
    const outputs = ran.value.outputs as Values;
    const found = solved === undefined ? undefined : outputs[solved.output];
    const residual = solved === undefined || typeof found !== 'number' ? undefined : found - solved.value;
    const { id, version, limits } = sheet as unknown as Sheet;
    const draft: Draft = {
      sheet: { id, version, limits },
      given: values,
      inputs,
      outputs,
      from,
      ...(residual === undefined ? {} : { residual }),
    };
    placed.push({ draft, first, by: 0 });
    return accept({ working: first + placed.length - 1, inputs, outputs });
  };
  const workingAt = (working: number): Working | undefined => {
    const at = placed[working - first];
    if (at === undefined) return undefined;
    workings[working - first] ??= workingOf(at);
    return workings[working - first];
  };
  return {
    workingAt,
    get workings() {
      for (let i = 0; i < placed.length; i++) workingAt(first + i);
      return workings;
    },
    keep,
    output: (working, output) => {
      const value = working === undefined ? undefined : placed[working - first]?.draft.outputs[output];
      return typeof value === 'number' ? value : undefined;
    },
    trace: (sheet, inputs, solved) => {
      const given = inputs as Readonly<Record<string, Given | undefined>>;
      const values: Record<string, Given['value']> = {};
      for (const name in given) {
        const one = given[name];
        if (one !== undefined) values[name] = one.value;
      }
      const kept = keep(sheet, values, () => originsBy(given), solved);
      return kept.ok ? kept.value.working : undefined;
    },
    size: () => first + placed.length,
    get whole() {
      return { first, drafts: placed.map(({ draft }) => draft) };
    },
    takeIn: ({ first: from, drafts }) => {
      const by = first + placed.length - from;
      for (const draft of drafts) placed.push({ draft, first: from, by });
      return by;
    },
  };
};
