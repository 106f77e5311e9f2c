import type { Form } from '../../book/index.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from './problem-of.ts';
import { quantityAnswer, type TypedQuantity } from './quantity-answer.ts';
import { choiceWord, type SheetWords } from './sheet-words.ts';

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

const choiceAnswer = (
  path: string,
  answer: string,
  choices: readonly (string | number)[],
  words: SheetWords,
): Result<string | number> => {
  const wanted = plain(answer);
  const found =
    choices.find((choice) => plain(String(choice)) === wanted) ??
    choices.find((choice) => plain(choiceWord(words, String(choice))) === wanted);
  const allowed = choices.map((choice) => choiceWord(words, String(choice)));
  return found === undefined
    ? refuse(problemOf('ANSWER_NOT_A_CHOICE', path, { given: answer, allowed }))
    : accept(found);
};

const claimAnswer = (path: string, answer: string, words: SheetWords): Result<boolean> => {
  const allowed = [words.say('questionSheet.yes'), words.say('questionSheet.no')];
  // a spreadsheet may have made a truth value of it
  const [yes, no] = [
    [allowed[0], 'yes', 'true'],
    [allowed[1], 'no', 'false'],
  ].map((each) => each.map((word) => plain(word ?? '')));
  if (yes?.includes(plain(answer))) return accept(true);
  if (no?.includes(plain(answer))) return accept(false);
  return refuse(problemOf('ANSWER_NOT_A_CHOICE', path, { given: answer, allowed }));
};

const numberAnswer = (path: string, answer: string): Result<number> => {
  const read = parseQuantity(answer, 'count', { path });
  if (read.ok) return accept(read.value.value);
  return read.problems.some(({ code }) => code === 'QUANTITY_AMBIGUOUS_NUMBER')
    ? read
    : refuse(problemOf('ANSWER_NOT_A_NUMBER', path, { given: answer }));
};

/**
 * What an answer puts into the book, by the form that the schema has at its place.
 *
 * Problems those of `quantityAnswer`; ANSWER_NOT_A_CHOICE, ANSWER_NOT_A_NUMBER, ANSWER_UNIT_NOT_ASKED,
 *          ANSWER_ID_UNKNOWN where the place holds parts or a list
 */
export const answerValue = (
  path: string,
  form: Form,
  typed: TypedQuantity,
  words: SheetWords,
): Result<string | number | boolean> => {
  const { answer, unit } = typed;
  if (form.is === 'quantity') return quantityAnswer(path, form.quantity.kind, typed);
  if (unit !== '') {
    return refuse(problemOf('ANSWER_UNIT_NOT_ASKED', path, { given: answer, parts: { unit } }));
  }
  switch (form.is) {
    case 'word':
      return choiceAnswer(path, answer, form.words, words);
    case 'claim':
      return claimAnswer(path, answer, words);
    case 'number':
      return numberAnswer(path, answer);
    case 'text':
      return accept(answer);
    default:
      return refuse(problemOf('ANSWER_ID_UNKNOWN', path, { given: path }));
  }
};
