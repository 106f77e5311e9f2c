import { accept, type Result } from '../quantity/problem.ts';
import { runSheet, type Sheet, type Values } from '../sheets/frame.ts';
import type { Origin, Working } from './finding.ts';

/** An input of a sheet with where it came from; for a list one origin a member, or one for all. */
export interface Given {
  readonly value: number | readonly number[] | string;
  readonly from?: Origin | readonly (Origin | undefined)[];
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
  ) => Result<number>;
  readonly workings: readonly Working[];
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

export const makeTracer = (): Tracer => {
  const workings: Working[] = [];
  const keep = <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    values: Values,
    from: () => Working['from'],
    solved?: { readonly output: string; readonly value: number },
  ): Result<number> => {
    const result = runSheet(sheet, values);
    if (!result.ok) return result;
    const outputs = result.value.outputs as Values;
    const found = solved === undefined ? undefined : outputs[solved.output];
    workings.push({
      sheet: sheet.id,
      version: sheet.version,
      inputs: values,
      outputs,
      notes: result.value.notes,
      // only for a reader who opens it
      get from() {
        return from();
      },
      ...(solved !== undefined && typeof found === 'number' ? { residual: found - solved.value } : {}),
    });
    return accept(workings.length - 1);
  };
  return {
    workings,
    keep,
    output: (working, output) => {
      const value = working === undefined ? undefined : workings[working]?.outputs[output];
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
      return kept.ok ? kept.value : undefined;
    },
  };
};
