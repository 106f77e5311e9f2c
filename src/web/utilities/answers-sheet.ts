import { type Book, bookProblemText } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import { findColumns } from '../../floor/questions/find-columns.ts';
import {
  type AnswersRead,
  answerProblemText,
  type FloorQuestion,
  isHeadedBy,
  type OpenQuestion,
  openQuestions,
  questionSheetWords,
  questionTab,
  questionTable,
  questionText,
  readAnswers,
} from '../../floor/questions/index.ts';
import { problemOf } from '../../floor/questions/problem-of.ts';
import { kindText, quantityProblemText } from '../../quantity/index.ts';
import { type Result, refuse } from '../../quantity/problem.ts';
import { readTable, type Tab, tableProblemText, writeCsv, writeXlsx } from '../../table/index.ts';
import { fieldWords, makeCatalogue, prefixed } from '../../text/index.ts';
import { schemaWords } from '../words/schema-words.ts';
import { makeWords, type Words, wordsOf } from '../words/words.ts';

const catalogue = makeCatalogue([
  quantityProblemText,
  bookProblemText,
  tableProblemText,
  answerProblemText,
  questionSheetWords,
  prefixed('kind.', kindText),
  schemaWords(),
  fieldWords,
]);

type Speech = Pick<Words, 'locale' | 'translation'>;

/** Words of the question sheet and of what can be wrong with one that comes back. */
export const sheetWords = (page: Speech): Words => wordsOf(catalogue, page);

export type SheetKind = 'xlsx' | 'csv';

/** Of which floor, and worked out from what. */
export interface AskedFloor {
  readonly book: Book;
  readonly assessment: Assessment;
  readonly floor: string;
  /** In the language of whom. */
  readonly speech: Speech;
}

/** What one cell can answer, put in words; a part of several answers is written on the page. */
const asked = (
  { book, assessment, floor }: AskedFloor,
  words: Words,
): readonly (OpenQuestion & FloorQuestion)[] =>
  openQuestions(book, assessment, floor)
    .filter(({ takes }) => takes !== 'part')
    .map((question) => ({ ...question, text: questionText(book, question.path, words) }));

/** The sheet that goes to the people of a floor, as the bytes of a file. */
export const writeSheet = (of: AskedFloor, kind: SheetKind): Uint8Array => {
  const words = sheetWords(of.speech);
  const system = of.book.about?.system;
  const table = questionTable(
    asked(of, words).filter(({ who }) => who === 'site'),
    words,
    system === undefined ? {} : { system },
  );
  return kind === 'csv'
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, words.say('questionSheet.lists'));
};

/** A sheet that was written while the page spoke English is read in English. */
const spokenIn = (tabs: readonly Tab[], speech: Speech): Words => {
  const english = makeWords(catalogue, 'en');
  return isHeadedBy(tabs, english) ? english : sheetWords(speech);
};

/** What a sheet that came back holds, row by row; nothing is changed here. */
export const readSheet = (of: AskedFloor, bytes: Uint8Array): Result<AnswersRead> => {
  const tabs = readTable(bytes);
  if (!tabs.ok) return tabs;
  const words = spokenIn(tabs.value, of.speech);
  const { rows } = questionTab(tabs.value, words);
  if (findColumns(rows, words) === undefined) return refuse(problemOf('ANSWER_NO_HEADER', ''));
  const questions = asked(of, words);
  const read = readAnswers(rows, of.book, { words, questions });
  const ours = new Set(questions.filter(({ who }) => who === 'site').map(({ path }) => path));
  return { ok: true, value: { ...read, missing: read.missing.filter((path) => ours.has(path)) } };
};
