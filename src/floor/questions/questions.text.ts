import type { AnswerNote } from './answers-read.ts';
import type { AnswerProblemCode } from './problems.ts';
import type { SheetColumn } from './sheet-columns.ts';

const columns: Readonly<Record<SheetColumn, string>> = {
  number: 'No.',
  question: 'Question',
  answer: 'Answer',
  unit: 'Unit',
  by: 'Who answers',
  on: 'When',
  remark: 'Remark',
  id: 'id',
};

const notes: Readonly<Record<AnswerNote, string>> = {
  labelChanged: 'The wording of the question was changed in the sheet; the answer was taken by its id.',
  notAsked: 'The book does not ask this now; the answer was taken by its id.',
  whoNotKept: 'Who answered and when is shown here only: the book keeps that for quantities.',
};

const under = (prefix: string, texts: Readonly<Record<string, string>>): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(texts).map(([key, text]) => [`${prefix}.${key}`, text]));

/** Words of the question sheet. */
export const questionSheetWords: { readonly en: Readonly<Record<string, string>> } = {
  en: {
    ...under('questionSheet.column', columns),
    ...under('questionSheet.note', notes),
    'questionSheet.name': 'Questions',
    'questionSheet.lists': 'Lists',
    'questionSheet.lead':
      'Write into the light cells. Leave empty what nobody knows: an empty cell is better than a guess. The first questions settle the most.',
    'questionSheet.lead.units':
      'Choose the unit from the list or write it behind the number. Write 1.5 or 1,5, and large numbers without a mark between thousands.',
    'questionSheet.yes': 'yes',
    'questionSheet.no': 'no',
    /** What people write where they do not know, parted by strokes. */
    'questionSheet.unknown': "?|-|–|n/a|unknown|not known|don't know|do not know",
  },
};

/** Words of the problems. */
export const answerProblemText: { readonly en: Readonly<Record<AnswerProblemCode, string>> } = {
  en: {
    ANSWER_NO_HEADER:
      'This is no question sheet: neither the row of headings nor the column with the ids was found.',
    ANSWER_NO_ID: 'The row has no id, so nobody can tell what "{given}" answers.',
    ANSWER_ID_UNKNOWN: 'The id "{given}" names no place of the book that takes an answer.',
    ANSWER_TWICE: 'The same id is answered in the rows {rows}. Keep one of them.',
    ANSWER_TORN:
      'The question "{given}" stands beside the id of another one: cells were moved without the rest of their row.',
    ANSWER_TWO_UNITS:
      'The answer "{given}" has a unit, and the unit beside it is "{unit}". Which one is meant?',
    ANSWER_UNIT_NOT_ASKED: 'The answer "{given}" has the unit "{unit}" beside it, and none is asked here.',
    ANSWER_NOT_A_CHOICE: '"{given}" is not one of: {allowed}.',
    ANSWER_NOT_A_NUMBER: '"{given}" is not a number.',
    ANSWER_DAY: '"{given}" is not a day that can be read in one way only. Write it as {allowed}.',
  },
};
