import { type Form, fieldAt, fieldsAt, stepsOf } from '../../book/index.ts';
import { defaultUnit } from '../../quantity/default-unit.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { Problem } from '../../quantity/problem.ts';
import { answerValue } from './answer-value.ts';
import type { AnswerNote } from './answers-read.ts';
import type { Candidate } from './fit-into-book.ts';
import type { FloorQuestion } from './floor-question.ts';
import { problemOf } from './problem-of.ts';
import { dayProblem, type SheetRow } from './sheet-row.ts';
import type { SheetWords } from './sheet-words.ts';

/** Compared without regard to case and spaces. */
export const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** The form at a place that takes an answer; of several, that of the kind that was asked. */
const formAt = (path: string, kind: Kind | undefined): Form | undefined => {
  const steps = stepsOf(path);
  // the version of the book is no answer of anybody
  if (steps.length === 0 || steps[0] === 'twinfloor') return undefined;
  const forms = [fieldAt(path) ?? [], fieldsAt(path)]
    .flat()
    .filter(({ is }) => ['quantity', 'word', 'claim', 'number', 'text'].includes(is));
  return forms.find((form) => form.is === 'quantity' && form.quantity.kind === kind) ?? forms[0];
};

/** What was made of a row. */
export type Understood =
  | { readonly is: 'empty' }
  | { readonly is: 'problems'; readonly problems: readonly Problem[] }
  | {
      readonly is: 'value';
      readonly candidate: Candidate;
      readonly text: string;
      readonly notes: readonly AnswerNote[];
    };

export const troubled = (...problems: readonly Problem[]): Understood => ({ is: 'problems', problems });

/** What the book asks now. */
export interface Asked {
  readonly byPath: ReadonlyMap<string, FloorQuestion>;
  readonly texts: ReadonlySet<string>;
  readonly given: boolean;
}

/**
 * What a row that holds an answer says, before the book is asked: every problem of it at once.
 */
export const understandRow = (row: SheetRow, path: string, asked: Asked, words: SheetWords): Understood => {
  const { answer, unit, by, on } = row;
  const question = asked.byPath.get(path);
  const form = formAt(path, question?.kind);
  if (form === undefined) return troubled(problemOf('ANSWER_ID_UNKNOWN', path, { given: row.id }));
  const label = plain(row.question);
  const isLabel = question !== undefined && plain(question.text) === label;
  if (!isLabel && asked.texts.has(label)) {
    return troubled(problemOf('ANSWER_TORN', path, { given: row.question }));
  }
  const kind = form.is === 'quantity' ? form.quantity.kind : undefined;
  const usual = kind === undefined ? [] : [defaultUnit(kind, 'metric'), defaultUnit(kind, 'us')];
  const expected = question?.unit === undefined ? usual : [question.unit];
  const value = answerValue(path, form, { answer, unit, expected }, words);
  const day = dayProblem(path, on);
  if (!value.ok || day !== undefined) {
    return troubled(...(value.ok ? [] : value.problems), ...(day === undefined ? [] : [day]));
  }
  const isSaid = by !== '' || on !== '';
  const said = { standing: 'stated', ...(by === '' ? {} : { by }), ...(on === '' ? {} : { on }) };
  const written = kind !== undefined && isSaid ? { value: value.value, ...said } : value.value;
  const notes: AnswerNote[] = [
    ...(asked.given && question === undefined ? (['notAsked'] as const) : []),
    ...(question !== undefined && !isLabel ? (['labelChanged'] as const) : []),
    ...(kind === undefined && isSaid ? (['whoNotKept'] as const) : []),
  ];
  return {
    is: 'value',
    candidate: { row: row.row, patch: { path, value: written } },
    text: String(value.value),
    notes,
  };
};
