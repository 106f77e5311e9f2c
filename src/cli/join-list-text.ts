import type { JoinList } from '../joins/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { sentenceOf } from './sentence.ts';
import { textTable } from './text-table.ts';
import { words } from './words.ts';

/** Rows beyond this many are counted; all of them are in the JSON. */
const mostTold = 40;

/** A heading is shown as far as it tells which it is. */
const mostLetters = 60;
const shortened = (text: string): string =>
  text.length > mostLetters ? `${text.slice(0, mostLetters)}…` : text;

/** What was read of a list, column by column and row by row where something was wrong. */
export const joinListText = (
  path: string,
  { matched, taken, problems, joins: _ }: JoinList,
  notes: readonly Problem[],
): string => {
  const refused = new Set(problems.map(({ parts }) => parts?.row));
  const known = taken.filter((one) => one.known).length;
  return [
    words.say('joins.list.head', { path, taken: taken.length, rows: taken.length + refused.size, known }),
    words.say('joins.list.columns'),
    textTable(
      matched.columns.map(({ heading, field, by }) => [
        shortened(heading),
        field ?? words.say('joins.list.passedOver'),
        words.say(`joins.list.${by}`),
      ]),
    ),
    ...notes.map(sentenceOf),
    ...(problems.length === 0 ? [] : [words.say('joins.list.unread', { n: problems.length })]),
    ...problems.slice(0, mostTold).map((problem) => `  ${sentenceOf(problem)}`),
    ...(problems.length > mostTold
      ? [`  ${words.say('joins.list.more', { n: problems.length - mostTold })}`]
      : []),
  ].join('\n');
};
