import { boundFor } from '../../book/first-book/blank-line.ts';
// these come with the form alone: through the index of the book they would come with the first figures
import { answerProblems, bookFromAnswers } from '../../book/first-book/book-from-answers.ts';
import type { Answers, Question } from '../../book/first-book/question.ts';
import { firstVerdictAfter, questionsFor } from '../../book/first-book/questions.ts';
import type { Book } from '../../book/index.ts';
import type { Finding, FloorAssessment } from '../../floor/assessment.ts';
import { assessBook } from '../../floor/index.ts';

/** What the answers so far say. */
export interface FirstVerdict {
  readonly questions: readonly Question[];
  /** Questions with an answer that reads. */
  readonly answered: readonly string[];
  /** Questions with an answer that does not read: it is left out until it does. */
  readonly unread: readonly string[];
  /** Questions that a first verdict still waits for. */
  readonly open: readonly string[];
  /** Absent only where the answers together make no book. */
  readonly book?: Book;
  readonly floor?: FloorAssessment;
  /** The rate at the site; absent while the way to the filler is not known: a run of no length would carry anything. */
  readonly rate?: Finding;
}

/** Answers without the blank ones: a question that is left blank is not known yet. */
export const givenAnswers = (answers: Answers): Answers =>
  Object.fromEntries(Object.entries(answers).filter(([, answer]) => answer.trim() !== ''));

const sides = ['site', 'builder'] as const;
const ofTank = ['Surface', 'Area', 'MakeUp'];

/** The form asks for the surface of a tank as long as nobody has named another source: an answer there names it. */
const withSource = (answers: Answers): Answers => {
  const named = sides
    .filter((side) => answers[`${side}Source`] === undefined)
    .filter((side) => ofTank.some((detail) => answers[side + detail] !== undefined))
    .map((side) => [`${side}Source`, 'tank above']);
  return { ...answers, ...Object.fromEntries(named) };
};

/** What the answers so far say of the rate at the site, as far as they say it. */
export const firstVerdict = (typed: Answers): FirstVerdict => {
  const given = withSource(givenAnswers(typed));
  const questions = questionsFor(given);
  const reads = (question: Question): boolean =>
    answerProblems(question, given[question.id] ?? '').length === 0;
  const has = questions.filter(({ id }) => given[id] !== undefined);
  const answered = has.filter(reads).map(({ id }) => id);
  const unread = has.filter((question) => !reads(question)).map(({ id }) => id);
  const open = questions
    .slice(0, firstVerdictAfter)
    .map(({ id }) => id)
    .filter((id) => !answered.includes(id));
  const made = bookFromAnswers(given);
  if (!made.ok) return { questions, answered, unread, open };
  const floor = assessBook(made.value).floors.find((each) => each.floor === boundFor);
  const rate = floor?.findings.find(({ id }) => id === 'runningRate');
  return {
    questions,
    answered,
    unread,
    open,
    book: made.value,
    ...(floor === undefined ? {} : { floor }),
    ...(rate === undefined || !answered.includes('siteBore') ? {} : { rate }),
  };
};
