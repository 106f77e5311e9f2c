import { fieldAt } from '../../book/field-at.ts';
import type { UnitSystem } from '../../quantity/default-unit.ts';
import type { Table, TableCell, TableColumn } from '../../table/table.ts';
import { expectedUnit, offeredUnits } from './expected-unit.ts';
import type { FloorQuestion } from './floor-question.ts';
import { type SheetColumn, sheetColumns } from './sheet-columns.ts';
import { choiceWord, type SheetWords } from './sheet-words.ts';

const widths: Readonly<Record<SheetColumn, number>> = {
  number: 5,
  question: 60,
  answer: 22,
  unit: 14,
  by: 20,
  on: 12,
  remark: 30,
  id: 4,
};

const columnOf = (column: SheetColumn, words: SheetWords): TableColumn => ({
  heading: words.say(`questionSheet.column.${column}`),
  width: widths[column],
  ...(column === 'on' ? { typedAs: 'day' as const } : {}),
  ...(column === 'id' ? { hidden: true } : {}),
});

/** What the answer is chosen from; nothing where it is written freely. */
const offeredAnswers = (question: FloorQuestion, words: SheetWords): readonly string[] => {
  if (question.choices !== undefined) return question.choices.map((choice) => choiceWord(words, choice));
  return question.kind === undefined && fieldAt(question.path)?.is === 'claim'
    ? [words.say('questionSheet.yes'), words.say('questionSheet.no')]
    : [];
};

const label = (text: string): TableCell => ({ text });
const open = (text = '', choices: readonly string[] = []): TableCell => ({
  text,
  open: true,
  ...(choices.length === 0 ? {} : { choices }),
});

export interface QuestionTableOptions {
  /** Units offered first where a question names none. */
  readonly system?: UnitSystem;
}

/**
 * The sheet that goes to the people of a floor: one question a row, those first that settle the most; question and
 * id locked, answer, unit, who, when and remark open. What comes back is read by `readAnswers`.
 */
export const questionTable = (
  questions: readonly FloorQuestion[],
  words: SheetWords,
  { system = 'metric' }: QuestionTableOptions = {},
): Table => ({
  name: words.say('questionSheet.name'),
  lead: [words.say('questionSheet.lead'), words.say('questionSheet.lead.units')],
  columns: sheetColumns.map((column) => columnOf(column, words)),
  rows: questions
    .toSorted((one, other) => other.settles - one.settles)
    .map((question, at) => {
      const { kind, path, text, unit } = question;
      return [
        label(String(at + 1)),
        label(text),
        open('', offeredAnswers(question, words)),
        kind === undefined ? label('') : open(expectedUnit(kind, unit, system), offeredUnits(kind)),
        open(),
        open(),
        open(),
        label(path),
      ];
    }),
});
