import { questionTable, type SheetWords } from '../floor/questions/index.ts';
import type { Problem } from '../quantity/problem.ts';
import { type Table, writeCsv, writeXlsx } from '../table/index.ts';
import type { Language } from '../text/index.ts';
import { askedInVain } from './asked-in-vain.ts';
import { askedOfFloor, onSheet } from './asked-of-floor.ts';
import type { Call, Ended } from './command.ts';
import { cliProblem } from './problems.ts';
import { questionWordsIn } from './question-words.ts';
import { questionsDocument } from './questions-document.ts';
import { questionsList } from './questions-list.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

/** A slip of the hand must not write over the book itself. */
const wrongOut = ({ values: { out } }: Call): readonly Problem[] =>
  out === undefined || /\.(xlsx|csv)$/i.test(out)
    ? []
    : [cliProblem('CLI_OPTION_VALUE', '--out', { given: out, allowed: words.say('cli.sheetFile') })];

const bytesOf = (table: Table, out: string, sheetWords: SheetWords): Uint8Array =>
  /\.csv$/i.test(out)
    ? new TextEncoder().encode(writeCsv(table))
    : writeXlsx(table, sheetWords.say('questionSheet.lists'));

/** Prints what a floor is still asked, or writes it as a sheet. */
export const runQuestions = async (call: Call, world: World): Promise<Ended> => {
  const { operands, values, flags } = call;
  const path = operands[0] ?? '-';
  const wrong = wrongOut(call);
  const file = await readBookFile(path, world);
  if (!file.ok) return { problems: [...wrong, ...file.problems], heading: headingOf(path, file) };
  const book = file.value;
  const problems = [...wrong, ...askedInVain(book, path, call)];
  if (problems.length > 0) return { problems };
  const { who, out, language } = values;
  const sheetWords = await questionWordsIn((language ?? 'en') as Language);
  const all = askedOfFloor(book, call, sheetWords);
  const asked = {
    ...all,
    questions: all.questions.filter((question) => who === undefined || question.who === who),
  };
  const forSheet = all.questions.filter((question) => onSheet(question) && question.who === (who ?? 'site'));
  let written: { path: string; bytes: number; questions: number } | undefined;
  if (out !== undefined) {
    const system = book.about?.system;
    const table = questionTable(forSheet, sheetWords, system === undefined ? {} : { system });
    const bytes = bytesOf(table, out, sheetWords);
    const done = await world.writeBytes(out, bytes);
    if (!done.ok) return { problems: done.problems };
    written = { path: out, bytes: bytes.length, questions: forSheet.length };
  }
  if (flags.has('json')) {
    world.out(`${JSON.stringify(questionsDocument(book, asked, written), null, 2)}\n`);
  } else if (written !== undefined) {
    world.out(`${words.say('questions.written', { count: written.questions, path: written.path })}\n`);
  } else world.out(questionsList(book, asked, world.locale));
  return 0;
};
