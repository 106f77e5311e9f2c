import { type Book, pointerOf, stepsOf, valueAt } from '../../book/index.ts';
import type { Tab } from '../../table/table.ts';
import type { AnswerNotUnderstood, AnswersRead, EmptyAnswer, Reported, TakenAnswer } from './answers-read.ts';
import { findColumns } from './find-columns.ts';
import { fitIntoBook } from './fit-into-book.ts';
import type { FloorQuestion } from './floor-question.ts';
import { problemOf } from './problem-of.ts';
import { type SheetRow, sheetRow } from './sheet-row.ts';
import type { SheetWords } from './sheet-words.ts';
import { type Asked, plain, troubled, type Understood, understandRow } from './understand-row.ts';

export interface ReadAnswersOptions {
  readonly words: SheetWords;
  /** What the book asks now: by it are known changed wordings, missing rows and units that were left as they were. */
  readonly questions?: readonly FloorQuestion[];
}

const saidIn = ({ by, on, remark }: SheetRow): Omit<Reported, 'row' | 'path'> => ({
  ...(by === '' ? {} : { by }),
  ...(on === '' ? {} : { on }),
  ...(remark === '' ? {} : { remark }),
});

/** Rows that answer the same place, by place. */
const answeredTwice = (
  rows: readonly (readonly [SheetRow, string])[],
): ReadonlyMap<string, readonly number[]> => {
  const byPath = new Map<string, number[]>();
  for (const [{ row }, path] of rows) byPath.set(path, [...(byPath.get(path) ?? []), row]);
  return new Map([...byPath].filter(([, each]) => each.length > 1));
};

/**
 * Reads a question sheet that came back, whatever was done to it: rows sorted, moved, deleted or added, columns
 * moved, labels changed. The id says what a row answers.
 *
 * Method   a row is taken wholly or not at all. Rows that were understood are put into the book together; what the
 *          book refuses is reported at its row, and the rest is one change that it accepts. Nothing is changed here.
 * Symbols  rows  of the tab, from its first
 * Problems those of `problems.ts`, of `readEntry` and of `patchBook`, at the row that has them
 * Cost     O(rows) and O(size of the book) for each row that the book refuses
 */
export const readAnswers = (
  rows: Tab['rows'],
  book: Book,
  { words, questions }: ReadAnswersOptions,
): AnswersRead => {
  const found = findColumns(rows, words);
  if (found === undefined) {
    const problems = [problemOf('ANSWER_NO_HEADER', '')];
    const notUnderstood = rows.map((cells, at) => ({
      row: at + 1,
      given: cells.join(' ').trim().slice(0, 120),
      problems,
    }));
    return { taken: [], notUnderstood, empty: [], missing: [], patch: [] };
  }
  const asked: Asked = {
    byPath: new Map(questions?.map((each) => [pointerOf(stepsOf(each.path)), each])),
    texts: new Set(questions?.map(({ text }) => plain(text))),
    given: questions !== undefined,
  };
  const unknown = new Set(words.say('questionSheet.unknown').split('|').map(plain));
  const read = rows
    .slice(found.from)
    .map((cells, at) => sheetRow(cells, found.places, found.from + at + 1))
    .map((row) => [row, row.id === '' ? '' : pointerOf(stepsOf(row.id))] as const);
  const isEmpty = ({ answer }: SheetRow): boolean => answer === '' || unknown.has(plain(answer));
  const twice = answeredTwice(read.filter(([row, path]) => path !== '' && !isEmpty(row)));
  const results = read.map(([row, path]): readonly [SheetRow, string, Understood] => {
    if (isEmpty(row)) return [row, path, { is: 'empty' }];
    if (path === '') return [row, path, troubled(problemOf('ANSWER_NO_ID', path, { given: row.answer }))];
    const same = twice.get(path);
    return same === undefined
      ? [row, path, understandRow(row, path, asked, words)]
      : [row, path, troubled(problemOf('ANSWER_TWICE', path, { parts: { rows: same.join(', ') } }))];
  });
  const candidates = results.flatMap(([, , each]) => (each.is === 'value' ? [each.candidate] : []));
  const { kept, refused } = fitIntoBook(book, candidates);
  const taken: TakenAnswer[] = [];
  const notUnderstood: AnswerNotUnderstood[] = [];
  const empty: EmptyAnswer[] = [];
  for (const [row, path, each] of results) {
    const at = { row: row.row, ...(path === '' ? {} : { path }), ...saidIn(row) };
    const problems = each.is === 'problems' ? each.problems : refused.get(row.row);
    if (each.is === 'empty') empty.push({ ...at, ...(row.answer === '' ? {} : { given: row.answer }) });
    else if (problems !== undefined) {
      notUnderstood.push({ ...at, given: `${row.answer} ${row.unit}`.trim(), problems });
    } else if (each.is === 'value') {
      const before = valueAt(book, path);
      const now = before === undefined ? {} : { before };
      taken.push({ ...at, path, value: each.text, ...now, notes: each.notes });
    }
  }
  const there = new Set(read.map(([, path]) => path));
  return {
    taken,
    notUnderstood,
    empty,
    missing: [...asked.byPath.keys()].filter((path) => !there.has(path)),
    patch: kept.map(({ patch }) => patch),
  };
};
