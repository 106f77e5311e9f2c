import { type Problem, parseQuantity, type Result } from '../../quantity/index.ts';
import type { Book } from '../book.ts';
import { patchBook, tryPatches } from '../patch-book.ts';
import { blankLine } from './blank-line.ts';
import type { Answers, Question } from './question.ts';
import { questionsFor } from './questions.ts';
import { usualSource } from './supply-questions.ts';

/** What is wrong with an answer, at the question that it answers; none for a blank one. */
export const answerProblems = (question: Question, answer: string): readonly Problem[] => {
  const { form, id } = question;
  const wrong = (code: string, allowed: readonly string[] | string): readonly Problem[] => [
    { code, path: id, given: answer, allowed },
  ];
  if (answer.trim() === '') return [];
  switch (form.is) {
    case 'quantity': {
      const read = parseQuantity(answer, form.kind, { path: id });
      if (!read.ok) return read.problems;
      return (read.value.value as number) > 0 || form.kind === 'gaugePressure'
        ? []
        : wrong('BOOK_OUT_OF_RANGE', '> 0');
    }
    case 'count': {
      const count = Number(answer);
      return Number.isInteger(count) && count >= form.least && count <= form.most
        ? []
        : wrong('BOOK_OUT_OF_RANGE', `${form.least} … ${form.most}`);
    }
    case 'choice':
      return form.options.includes(answer) ? [] : wrong('BOOK_NOT_ONE_OF', form.options);
    case 'words':
      return [];
  }
};

/**
 * A first book from the answers of the short form.
 *
 * Method   the blank line, patched by each answer in the order of the questions; an answer that can't be read is left out
 *          here and told at its question by `answerProblems`
 * Returns  the book, read as any other
 * Assumes  what nobody has answered keeps the value of `blankLine`, marked as assumed
 */
export const bookFromAnswers = (answers: Answers): Result<Book> => {
  const given: Answers = Object.fromEntries(
    Object.entries(answers)
      .map(([id, answer]) => [id, answer.trim()])
      .filter(([, answer]) => answer !== ''),
  );
  const good: Record<string, string> = Object.fromEntries(
    questionsFor(given)
      .filter((question) => given[question.id] !== undefined)
      .filter((question) => answerProblems(question, given[question.id]!).length === 0)
      .map(({ id }) => [id, given[id]!]),
  );
  // a floor of which something is answered but not its source stands on the usual one
  for (const floor of ['site', 'builder']) {
    const source = `${floor}Source`;
    const some = Object.keys(good).some((id) => id.startsWith(floor));
    if (some && good[source] === undefined) good[source] = usualSource;
  }
  let book = blankLine;
  for (const question of questionsFor(good)) {
    const answer = good[question.id];
    if (answer !== undefined) book = tryPatches(book, question.put(answer, good));
  }
  return patchBook(book, []);
};
