import { type Book, valueAt } from '../book/index.ts';
import { placeText } from '../book/place-text.ts';
import type { AnswersRead, Reported } from '../floor/questions/index.ts';
import { sentenceOf } from './sentence.ts';
import { words } from './words.ts';

/** What stood at a place, as one line. */
const lineOf = (value: unknown): string => {
  const whole = typeof value === 'object' && value !== null ? (valueAt(value, '/value') ?? value) : value;
  return typeof whole === 'object' ? JSON.stringify(whole) : String(whole);
};

const saidText = ({ by, on, remark }: Reported): readonly string[] => [
  ...(by === undefined ? [] : [words.say('answers.said', { by })]),
  ...(on === undefined ? [] : [words.say('answers.saidOn', { on })]),
  ...(remark === undefined ? [] : [words.say('answers.remark', { remark })]),
];

/** Row by row what was taken, what was not understood and why, and what is still open. */
export const answersText = (book: Book, read: AnswersRead): string => {
  const { taken, notUnderstood, empty, missing } = read;
  const takenLines = taken.flatMap((one) => {
    const { row, path, value, before, notes } = one;
    const line = [
      words.say('answers.row', { row: String(row), what: placeText(book, path), value }),
      ...(before === undefined ? [] : [words.say('answers.before', { before: lineOf(before) })]),
      ...saidText(one),
    ];
    return [`  ${line.join(', ')}`, ...notes.map((code) => `    ${words.say(`questionSheet.note.${code}`)}`)];
  });
  const notLines = notUnderstood.flatMap((one) => {
    const { row, path, given, problems } = one;
    const line =
      path === undefined
        ? words.say('answers.bare', { row: String(row), given })
        : words.say('answers.rowNot', { row: String(row), what: placeText(book, path), given });
    return [
      `  ${[line, ...saidText(one)].join(', ')}`,
      ...problems.map((problem) => `    ${sentenceOf(problem)}`),
    ];
  });
  return [
    [words.say('answers.taken', { count: taken.length }), ...takenLines].join('\n'),
    ...(notUnderstood.length === 0
      ? []
      : [[words.say('answers.notUnderstood', { count: notUnderstood.length }), ...notLines].join('\n')]),
    ...(empty.length === 0 ? [] : [words.say('answers.empty', { count: empty.length })]),
    ...(missing.length === 0
      ? []
      : [
          words.say('answers.missing', {
            count: missing.length,
            what: missing.map((path) => placeText(book, path)).join('; '),
          }),
        ]),
  ].join('\n\n');
};
