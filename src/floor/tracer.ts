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
interface Draft extends Kept {
  readonly sheet: Sheet;
  readonly given: Values;
  readonly from: () => Working['from'];
  readonly residual?: number;
}

const workingOf = ({ sheet, given, inputs, outputs, from, residual }: Draft): Working => ({
  sheet: sheet.id,
  version: sheet.version,
  inputs: given,
  outputs,
  notes: notesOf(sheet, { inputs, outputs }),
  from: from(),
  ...(residual === undefined ? {} : { residual }),
});

export const makeTracer = (): Tracer => {
  const drafts: Draft[] = [];
  const workings: Working[] = [];
  const keep = <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    values: Values,
    from: () => Working['from'],
    solved?: { readonly output: string; readonly value: number },
  ): Result<Draft> => {
    const ran = putThrough(sheet, values);
    if (!ran.ok) return ran;
    const { inputs } = ran.value;
    const outputs = ran.value.outputs as Values;
    const found = solved === undefined ? undefined : outputs[solved.output];
    const residual = solved === undefined || typeof found !== 'number' ? undefined : found - solved.value;
    const draft: Draft = {
      working: drafts.length,
      sheet: sheet as unknown as Sheet,
      given: values,
      inputs,
      outputs,
      from,
      ...(residual === undefined ? {} : { residual }),
    };
    drafts.push(draft);
    return accept(draft);
  };
  const workingAt = (working: number): Working | undefined => {
    const draft = drafts[working];
    if (draft === undefined) return undefined;
    workings[working] ??= workingOf(draft);
    return workings[working];
  };
  return {
    workingAt,
    get workings() {
      for (const { working } of drafts) workingAt(working);
      return workings;
    },
    keep,
    output: (working, output) => {
      const value = working === undefined ? undefined : drafts[working]?.outputs[output];
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
  };
};
