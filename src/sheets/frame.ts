import type { Kind } from '../quantity/kinds.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';

/** One number that a sheet takes or gives, in the SI unit of its kind. */
export interface NumberField {
  readonly type: 'number';
  readonly kind: Kind;
  /** Symbol as it stands in the formula, in TeX. */
  readonly symbol: string;
  readonly above?: number;
  readonly least?: number;
  readonly below?: number;
  readonly most?: number;
  /** Taken where the input is left out; shown as assumed. */
  readonly assumed?: number;
  /** Significant digits that it is shown to, where they are others than its kind's usual ones. */
  readonly digits?: number;
  /** Its bounds are the ends of this table: what lies beyond may well be, but nothing is extrapolated. */
  readonly table?: Source;
}

/** Several numbers of one kind: the points of a curve, the pieces of a pipe. */
export interface ListField {
  readonly type: 'list';
  readonly kind: Kind;
  readonly symbol: string;
  readonly above?: number;
  readonly least?: number;
  readonly most?: number;
  readonly fewest?: number;
  /** Significant digits that each is shown to, where they are others than its kind's usual ones. */
  readonly digits?: number;
}

export interface ChoiceField<T extends string = string> {
  readonly type: 'choice';
  readonly symbol: string;
  readonly options: readonly T[];
  readonly assumed?: T;
  /** Its options are the rows of this table, which may have more than those that are held. */
  readonly table?: Source;
}

export type Field = NumberField | ListField | ChoiceField;
export type Value = number | readonly number[] | string;
export type Values = Readonly<Record<string, Value>>;

/** Computable, but something the reader must know: it travels with the figure to the screen and the paper. */
export interface Note {
  readonly code: string;
  readonly parts?: Readonly<Record<string, string | number>>;
}

export type Mark = 'read' | 'computed' | 'memory' | 'common practice';

export interface Source {
  readonly title: string;
  readonly edition?: string;
  readonly place?: string;
  readonly mark: Mark;
}

/** A source as a sentence names it. */
export const sourceName = ({ title, edition }: Source): string =>
  edition === undefined ? title : `${title}, ${edition}`;

export interface Limit<I, O> {
  readonly code: string;
  readonly broken: (inputs: I, outputs: O) => boolean;
  /** Numbers that the sentence of the note wants. */
  readonly parts?: (inputs: I, outputs: O) => Readonly<Record<string, string | number>>;
}

/**
 * One calculation as data: form, command line, papers and documentation are made from it.
 * The words of a sheet stand beside it in `*.text.ts`, its published cases in `*.cases.ts`.
 */
export interface Sheet<I = Values, O = Values> {
  /** `discipline/name`. */
  readonly id: string;
  /** Raised when a coefficient, a formula or an assumption changes. */
  readonly version: number;
  readonly inputs: { readonly [K in keyof I]-?: Field };
  readonly outputs: { readonly [K in keyof O]-?: Field };
  /** TeX, one line an equation. */
  readonly formula: readonly string[];
  readonly limits: readonly Limit<I, O>[];
  readonly sources: readonly Source[];
  /** Problems between fields; what one field allows stands in the field. */
  readonly check?: (inputs: I) => readonly Problem[];
  readonly compute: (inputs: I) => O;
}

export interface Computed<O> {
  readonly outputs: O;
  readonly notes: readonly Note[];
  /** Names of the inputs that were left out and taken from the sheet's own default. */
  readonly assumed: readonly string[];
}

/** Gives the sheet as it was declared; only fixes the types of its inputs and outputs. */
export const defineSheet = <I extends object, O extends object>(sheet: Sheet<I, O>): Sheet<I, O> => sheet;

/** Longer than any pump curve or run; keeps a hostile file from filling memory or the argument stack. */
const longestList = 10_000;

/** What is wrong with a value, as code and what is allowed; nothing is made for the good ones, which nearly all are. */
type Wrong = readonly [code: string, allowed: string | readonly string[]] | undefined;

const numberWrong = (field: NumberField | ListField, n: unknown): Wrong => {
  if (typeof n !== 'number' || !Number.isFinite(n)) return ['SHEET_NUMBER', 'a finite number'];
  if (field.above !== undefined && !(n > field.above)) return ['SHEET_RANGE', `> ${field.above}`];
  if (field.least !== undefined && n < field.least) return ['SHEET_RANGE', `>= ${field.least}`];
  if (field.most !== undefined && n > field.most) return ['SHEET_RANGE', `<= ${field.most}`];
  if (field.type === 'number' && field.below !== undefined && !(n < field.below)) {
    return ['SHEET_RANGE', `< ${field.below}`];
  }
  return undefined;
};

/** The same for a whole field; of a list the first number that is wrong. */
const fieldWrong = (field: Field, value: unknown): Wrong => {
  if (field.type === 'choice') {
    return typeof value === 'string' && field.options.includes(value)
      ? undefined
      : ['SHEET_CHOICE', field.options];
  }
  if (field.type === 'number') return numberWrong(field, value);
  if (!Array.isArray(value)) return ['SHEET_LIST', 'a list of numbers'];
  if (value.length < (field.fewest ?? 1)) return ['SHEET_LIST_SHORT', `${field.fewest ?? 1}`];
  if (value.length > longestList) return ['SHEET_LIST_LONG', `${longestList}`];
  for (const n of value) {
    const wrong = numberWrong(field, n);
    if (wrong !== undefined) return wrong;
  }
  return undefined;
};

const tableCodes: Readonly<Record<string, string>> = {
  SHEET_RANGE: 'SHEET_BEYOND_TABLE',
  SHEET_CHOICE: 'SHEET_OFF_TABLE',
};

/** The problem of a field, which a table's end makes another one. */
const fieldProblem = (
  path: string,
  field: Field,
  given: unknown,
  [code, allowed]: NonNullable<Wrong>,
): Problem => {
  const table = field.type === 'list' ? undefined : field.table;
  const ofTable = tableCodes[code];
  return table === undefined || ofTable === undefined
    ? { code, path, given, allowed }
    : { code: ofTable, path, given, allowed, parts: { table: sourceName(table) } };
};

const finite = (value: Value): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : typeof value === 'string' || value.every((n) => Number.isFinite(n));

/** A sheet that took its inputs: what it was given, with its own defaults, and what it gave. */
export interface Ran<O> {
  readonly inputs: Values;
  readonly outputs: O;
  readonly assumed: readonly string[];
}

/** Puts inputs that may come from anywhere through a sheet: every problem at once, or its outputs. */
export const putThrough = <I extends object, O extends object>(
  sheet: Sheet<I, O>,
  given: Readonly<Record<string, unknown>>,
): Result<Ran<O>> => {
  const fields: Readonly<Record<string, Field>> = sheet.inputs;
  const problems: Problem[] = [];
  for (const name in given) {
    if (!Object.hasOwn(fields, name)) {
      problems.push({ code: 'SHEET_INPUT_UNKNOWN', path: name, allowed: Object.keys(fields) });
    }
  }
  const assumed: string[] = [];
  const inputs: Record<string, unknown> = {};
  for (const name in fields) {
    const field = fields[name]!;
    let value = given[name];
    if (value === undefined && field.type !== 'list' && field.assumed !== undefined) {
      value = field.assumed;
      assumed.push(name);
    }
    inputs[name] = value;
    if (value === undefined) {
      problems.push({ code: 'SHEET_INPUT_MISSING', path: name });
      continue;
    }
    const wrong = fieldWrong(field, value);
    if (wrong !== undefined) problems.push(fieldProblem(name, field, value, wrong));
  }
  if (problems.length === 0) problems.push(...(sheet.check?.(inputs as I) ?? []));
  if (problems.length > 0) return refuse(...problems);
  const outputs = sheet.compute(inputs as I);
  for (const name in outputs) {
    if (!finite(outputs[name] as Value)) problems.push({ code: 'SHEET_NOT_COMPUTABLE', path: name });
  }
  if (problems.length > 0) return refuse(...problems);
  return accept({ inputs: inputs as Values, outputs, assumed });
};

/** What the reader of a sheet's figures must know: the limits that they break. */
export const notesOf = <I extends object, O extends object>(
  sheet: Pick<Sheet<I, O>, 'limits'>,
  { inputs, outputs }: Pick<Ran<O>, 'inputs' | 'outputs'>,
): readonly Note[] => {
  const notes: Note[] = [];
  for (const { code, broken, parts } of sheet.limits) {
    if (!broken(inputs as I, outputs)) continue;
    notes.push(parts === undefined ? { code } : { code, parts: parts(inputs as I, outputs) });
  }
  return notes;
};

/** Runs a sheet: every problem at once, or outputs with their notes. */
export const runSheet = <I extends object, O extends object>(
  sheet: Sheet<I, O>,
  given: Readonly<Record<string, unknown>>,
): Result<Computed<O>> => {
  const ran = putThrough(sheet, given);
  if (!ran.ok) return ran;
  const { outputs, assumed } = ran.value;
  return accept({ outputs, notes: notesOf(sheet, ran.value), assumed });
};
