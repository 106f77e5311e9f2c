import { floorBoundFor } from '../book/floor-bound-for.ts';
import type { Book } from '../book/index.ts';
import type { FloorAssessment } from '../floor/assessment.ts';
import { assessBook } from '../floor/index.ts';
import {
  type FloorQuestion,
  type OpenQuestion,
  openQuestions,
  questionText,
  type SheetWords,
} from '../floor/questions/index.ts';
import type { Call } from './command.ts';
import { questionWords } from './question-words.ts';

/** A question that is open, as it is put. */
export type PutQuestion = OpenQuestion & FloorQuestion;

export interface Asked {
  readonly floor: FloorAssessment;
  readonly format: string;
  readonly questions: readonly PutQuestion[];
}

/** The open questions of the floor of a call, each with its words. */
export const askedOfFloor = (
  book: Book,
  { values: { floor, format } }: Call,
  words: SheetWords = questionWords,
): Asked => {
  const assessment = assessBook(book, format === undefined ? {} : { format });
  const tag = floorBoundFor(book, floor);
  const questions = openQuestions(book, assessment, tag).map((question) => ({
    ...question,
    text: questionText(book, question.path, words),
  }));
  return { floor: assessment.floors.find((one) => one.floor === tag)!, format: assessment.format, questions };
};

/** What can be asked in one cell of a sheet; a part of several answers is filled in on the page. */
export const onSheet = ({ takes }: OpenQuestion): boolean => takes !== 'part';
