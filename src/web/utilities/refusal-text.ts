import type { Book } from '../../book/index.ts';
import type { Refusal } from '../../floor/utilities/utility-finding.ts';
import type { Kind } from '../../quantity/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { endsAsSaid } from '../../sheets/problems-as-typed.ts';
import type { FindSheet } from '../sheets/sheet-context.ts';
import type { UnitChoice } from '../state/page-state.ts';
import type { Words } from '../words/words.ts';

interface Shown {
  readonly units: UnitChoice;
  readonly book?: Book | undefined;
}

/** Digits that still tell what came from what is allowed. */
const digits = 4;

/** A problem whose numbers stand in the reader's units: a sheet states them in SI. */
const inUnits = (words: Words, problem: Problem, kind: Kind, show: Shown): Problem => {
  const text = (value: number): string => words.quantity(value, kind, { ...show, digits }).text;
  const { given, allowed } = problem;
  return {
    ...problem,
    ...(typeof given === 'number' ? { given: text(given) } : {}),
    ...(typeof allowed === 'string' ? { allowed: endsAsSaid(allowed, text) } : {}),
  };
};

/** What a sheet would not take, in sentences that name its inputs and speak in the reader's units. */
export const refusalSentences = (
  words: Words,
  findSheet: FindSheet,
  { sheet, problems }: Refusal,
  show: Shown,
): string =>
  problems
    .map((problem) => {
      const input = problem.path.split(/[/[]/)[0] ?? '';
      const field = findSheet(sheet)?.inputs[input];
      const key = `sheet.${sheet}.inputs.${input}`;
      const named = words.has(key) ? { ...problem, path: words.say(key) } : problem;
      const kind = field !== undefined && 'kind' in field ? field.kind : undefined;
      return words.problem(kind === undefined ? named : inUnits(words, named, kind, show));
    })
    .join(' ');
