import { type Book, patchBook, writeBook } from '../book/index.ts';
import { findColumns } from '../floor/questions/find-columns.ts';
import { type AnswersRead, questionTab, readAnswers } from '../floor/questions/index.ts';
import { problemOf } from '../floor/questions/problem-of.ts';
import { type Problem, type Result, refuse } from '../quantity/problem.ts';
import { readTable } from '../table/index.ts';
import { limits } from '../table/limits.ts';
import { answersDocument } from './answers-document.ts';
import { answersText } from './answers-text.ts';
import { askedInVain } from './asked-in-vain.ts';
import { askedOfFloor, onSheet } from './asked-of-floor.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { questionWordsOf } from './question-words.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const wrongCall = ({ operands: [path, sheet], flags }: Call): readonly Problem[] => [
  ...(path === '-' && sheet === '-' ? [cliProblem('CLI_INPUT_TWICE', '-')] : []),
  ...(path === '-' && flags.has('write') ? [cliProblem('CLI_WRITE_NOWHERE', '--write')] : []),
];

/** Reads a sheet for a floor; what is missing of it is told for the side that was asked. */
const readSheet = async (
  book: Book,
  bytes: Uint8Array,
  call: Call,
): Promise<Result<{ readonly read: AnswersRead; readonly floor: string }>> => {
  const tabs = readTable(bytes);
  if (!tabs.ok) return tabs;
  const sheetWords = await questionWordsOf(tabs.value);
  const { floor, questions } = askedOfFloor(book, call, sheetWords);
  const asked = questions.filter(onSheet);
  const { rows } = questionTab(tabs.value, sheetWords);
  // said once, not of every row of what is something else
  if (findColumns(rows, sheetWords) === undefined) return refuse(problemOf('ANSWER_NO_HEADER', ''));
  const read = readAnswers(rows, book, { words: sheetWords, questions: asked });
  const there = new Set([...read.taken, ...read.notUnderstood, ...read.empty].map(({ path }) => path));
  const whoOf = new Map(asked.map(({ path, who }) => [path, who]));
  const sides = new Set(asked.filter(({ path }) => there.has(path)).map(({ who }) => who));
  const missing = read.missing.filter((path) => sides.has(whoOf.get(path) ?? 'site'));
  return { ok: true, value: { floor: floor.floor, read: { ...read, missing } } };
};

/** Writes the book with all that was taken; the file stays as it was where anything fails. */
const written = async (
  book: Book,
  { patch }: AnswersRead,
  path: string,
  world: World,
): Promise<Result<string>> => {
  if (patch.length === 0) return refuse(cliProblem('CLI_NOTHING_TAKEN', path));
  const next = patchBook(book, patch);
  if (!next.ok) return next;
  return await world.writeBytes(path, new TextEncoder().encode(writeBook(next.value)));
};

/** Reports what a sheet that came back puts into the book, and puts it in where that is asked. */
export const runAnswers = async (call: Call, world: World): Promise<Ended> => {
  const { operands, flags } = call;
  const [path = '-', sheet = '-'] = operands;
  const wrong = wrongCall(call);
  if (wrong.length > 0) return { problems: wrong };
  const file = await readBookFile(path, world);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const book = file.value;
  const vain = askedInVain(book, path, call);
  if (vain.length > 0) return { problems: vain };
  const bytes = await world.readBytes(sheet, limits.file);
  if (!bytes.ok) return { problems: bytes.problems };
  const result = await readSheet(book, bytes.value, call);
  if (!result.ok) return { problems: result.problems, heading: sheet };
  const { read, floor } = result.value;
  const report = (isWritten: boolean): string =>
    flags.has('json')
      ? `${JSON.stringify(answersDocument(read, { book: path, sheet, floor, written: isWritten }), null, 2)}\n`
      : `${answersText(book, read)}\n\n${isWritten ? words.say('answers.written', { path }) : words.say('answers.notWritten')}\n`;
  if (flags.has('write')) {
    const done = await written(book, read, path, world);
    if (!done.ok) {
      // the rows say why nothing was taken; as JSON the problem alone is the answer
      if (!flags.has('json')) world.out(`${answersText(book, read)}\n\n`);
      return { problems: done.problems };
    }
  }
  world.out(report(flags.has('write')));
  return read.notUnderstood.length > 0 ? 2 : 0;
};
