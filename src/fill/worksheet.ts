import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { type Note, runSheet, type Sheet, type Values } from '../sheets/frame.ts';

/** A sheet with the numbers that were put through it, as a line of a worksheet. */
export interface Step {
  readonly sheet: string;
  readonly version: number;
  readonly inputs: Values;
  readonly outputs: Values;
  readonly notes: readonly Note[];
  /** Inputs that a former step gave. */
  readonly from: Readonly<Record<string, StepOrigin>>;
}

export interface StepOrigin {
  readonly step: number;
  readonly output: string;
}

/** A number that a step gave, or one that was handed in. */
export type StepInput = number | readonly number[] | string | StepOrigin;

export interface Worksheet {
  readonly steps: readonly Step[];
  /** Problems of the sheets, each at the place in the input that the caller names for the sheet's field. */
  readonly problems: readonly Problem[];
  /** Puts inputs through a sheet; what is undefined is left to the sheet's own assumption. */
  readonly run: <I extends object, O extends object>(
    sheet: Sheet<I, O>,
    inputs: { readonly [K in keyof I]?: StepInput | undefined },
    places?: Readonly<Record<string, string>>,
  ) => Result<number>;
  /** What a step gave. */
  readonly number: (at: StepOrigin) => number;
  readonly word: (at: StepOrigin) => string;
}

const isOrigin = (input: StepInput): input is StepOrigin =>
  typeof input === 'object' && !Array.isArray(input) && 'step' in input;

/** An output of a step. */
export const outputOf = (step: number, output: string): StepOrigin => ({ step, output });

export const makeWorksheet = (): Worksheet => {
  const steps: Step[] = [];
  const problems: Problem[] = [];
  const given = ({ step, output }: StepOrigin) => steps[step]!.outputs[output]!;
  return {
    steps,
    problems,
    number: (at) => given(at) as number,
    word: (at) => given(at) as string,
    run: (sheet, inputs, places = {}) => {
      const values: Record<string, Values[string]> = {};
      const from: Record<string, StepOrigin> = {};
      for (const [name, input] of Object.entries(inputs) as [string, StepInput | undefined][]) {
        if (input === undefined) continue;
        if (isOrigin(input)) from[name] = input;
        values[name] = isOrigin(input) ? given(input) : input;
      }
      const result = runSheet(sheet, values);
      if (!result.ok) {
        problems.push(
          ...result.problems.map((problem) => {
            // a member of a list keeps its number behind the place of the list
            const [field = '', ...member] = problem.path.split('.');
            return { ...problem, path: [places[field] ?? field, ...member].join('/') };
          }),
        );
        return result;
      }
      steps.push({
        sheet: sheet.id,
        version: sheet.version,
        inputs: values,
        outputs: result.value.outputs as unknown as Values,
        notes: result.value.notes,
        from,
      });
      return accept(steps.length - 1);
    },
  };
};
