import type { Figure } from '../floor/assessment.ts';
import { runSheet, type Sheet, type Values } from '../sheets/frame.ts';
import type { Limit } from './limit.ts';

/** One input of a sheet: a figure of the book, or a word with its place. */
type SheetGiven = Figure | { readonly word: string; readonly path: string };

/**
 * A bound that a sheet makes of figures of the book.
 *
 * Returns  a limit with its working; unknown where a figure is missing, or the sheet refuses them, with the places to look at
 */
export const sheetLimit = <I extends object, O extends object>(
  sheet: Sheet<I, O>,
  given: { readonly [K in keyof I]?: SheetGiven },
  output: keyof O & string,
  rest: Pick<Limit, 'sense'> & Pick<Figure, 'id' | 'kind'>,
): Limit => {
  const { sense, id, kind } = rest;
  const inputs = Object.entries(given) as readonly (readonly [string, SheetGiven])[];
  const places = inputs.flatMap(([, one]) => (one.path === undefined ? [] : [one.path]));
  const missing = inputs.flatMap(([, one]) => ('word' in one ? [] : one.missing));
  const unknown = (at: readonly string[]): Limit => ({
    sense,
    figure: { id, kind, assumed: [], missing: at },
  });
  if (missing.length > 0) return unknown(missing);
  const values: Values = Object.fromEntries(
    inputs.map(([name, one]) => [name, 'word' in one ? one.word : one.value!]),
  );
  const run = runSheet(sheet, values);
  if (!run.ok) return unknown(places);
  const { outputs, notes } = run.value;
  return {
    sense,
    figure: { id, kind, value: outputs[output] as number, assumed: [], missing: [] },
    working: {
      sheet: sheet.id,
      version: sheet.version,
      inputs: values,
      outputs: { ...outputs } as Values,
      notes,
      from: Object.fromEntries(
        inputs.flatMap(([name, { path }]) => (path === undefined ? [] : [[name, { path }]])),
      ),
    },
    fields: sheet.inputs,
  };
};
