import { runSheet, type Value, type Values } from './frame.ts';
import type { SheetCase } from './sheet-case.ts';
import type { SheetEntry } from './sheet-entry.ts';

/** One printed figure of a case beside what the sheet gives. */
export interface CaseFigure {
  /** Name of the output, with its place where it is a list. */
  readonly output: string;
  readonly expected: number;
  /** NaN where the sheet refused or has no such output. */
  readonly got: number;
  /** What the tolerance allows, in the unit of the output. */
  readonly allowed: number;
  readonly within: boolean;
}

export interface CaseResult {
  readonly sheet: string;
  readonly case: SheetCase;
  readonly figures: readonly CaseFigure[];
  /** Codes of notes that the case names and the sheet did not give. */
  readonly notesMissing: readonly string[];
  /** Codes of the problems, where the sheet refused. */
  readonly problems: readonly string[];
}

const parts = (name: string, value: Value | undefined): (readonly [string, number])[] => {
  if (typeof value === 'number') return [[name, value]];
  if (typeof value === 'object') return value.map((n, i) => [`${name}[${i}]`, n]);
  return [];
};

/** Puts one case through its sheet and compares every printed figure. */
export const caseResult = ({ sheet }: SheetEntry, sheetCase: SheetCase): CaseResult => {
  const run = runSheet(sheet, sheetCase.inputs);
  const outputs: Values = run.ok ? run.value.outputs : {};
  const given = new Set(run.ok ? run.value.notes.map((note) => note.code) : []);
  const { relative = 0, absolute = 0 } = sheetCase.tolerance;
  const figures = Object.entries(sheetCase.outputs).flatMap(([name, value]) => {
    if (typeof value === 'string') {
      // a word is right or wrong: the whole figure is lost where it differs
      const got = outputs[name] === value ? 1 : 0;
      return [{ output: name, expected: 1, got, allowed: 0.5, within: got === 1 }];
    }
    const got = new Map(parts(name, outputs[name]));
    return parts(name, value).map(([output, expected]) => {
      const actual = got.get(output) ?? Number.NaN;
      const allowed = Math.max(absolute, relative * Math.abs(expected));
      return { output, expected, got: actual, allowed, within: Math.abs(actual - expected) <= allowed };
    });
  });
  return {
    sheet: sheet.id,
    case: sheetCase,
    figures,
    notesMissing: (sheetCase.notes ?? []).filter((code) => !given.has(code)),
    problems: run.ok ? [] : run.problems.map((problem) => problem.code),
  };
};
