export type { Takes } from './answerable-places.ts';
export type {
  AnswerNote,
  AnswerNotUnderstood,
  AnswersRead,
  EmptyAnswer,
  Reported,
  TakenAnswer,
} from './answers-read.ts';
export { isHeadedBy, questionTab } from './find-columns.ts';
export type { FloorQuestion } from './floor-question.ts';
export { type Answerer, type OpenQuestion, openQuestions } from './open-questions.ts';
export { type PlaceBehind, placesBehind, type Waits } from './places-behind.ts';
export { type AnswerProblemCode, answerProblems } from './problems.ts';
export { type QuestionTableOptions, questionTable } from './question-table.ts';
export { questionText } from './question-text.ts';
export { answerProblemText, questionSheetWords } from './questions.text.ts';
export { type ReadAnswersOptions, readAnswers } from './read-answers.ts';
export type { SheetWords } from './sheet-words.ts';
