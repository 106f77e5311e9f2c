import { floorBoundFor } from '../book/floor-bound-for.ts';
import { type Book, readBook, writeBook } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { findCode, rememberedFrom, withJoins } from '../joins/index.ts';
import { type Packing, packingOf } from '../packing/packing-of.ts';
import type { Problem, Result } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Call, Ended } from './command.ts';
import { joinListText } from './join-list-text.ts';
import { type Asked, joinsDocument } from './joins-document.ts';
import { joinsTextOf } from './joins-text.ts';
import { packingTextOf } from './packing-text.ts';
import { cliProblem } from './problems.ts';
import { headingOf, readBookFile } from './read-book-file.ts';
import { type ReadList, readJoinFile } from './read-join-file.ts';
import { type RecordsFile, readRecordsFile } from './read-records-file.ts';
import { toldJoins } from './told-joins.ts';
import { words } from './words.ts';
import type { World } from './world.ts';

const needList = ['tab', 'kind', 'split', 'encoding', 'columns', 'remember'] as const;

const wrongCall = (call: Call, book: Book): readonly Problem[] => {
  const { values, flags, operands } = call;
  const boxes = (book.line?.boxes ?? []).map(({ tag }) => tag);
  const splits = (book.line?.splits ?? []).map(({ tag }) => tag);
  const without = [
    ...needList.filter((name) => values[name] !== undefined),
    ...(flags.has('write') ? ['write'] : []),
  ];
  return [
    ...(values.list === undefined
      ? without.map((name) => cliProblem('CLI_OPTION_WANTS_LIST', `--${name}`, { allowed: '--list' }))
      : []),
    ...(values.box === undefined || boxes.includes(values.box)
      ? []
      : [cliProblem('CLI_OPTION_VALUE', '--box', { given: values.box, allowed: boxes })]),
    ...(values.split === undefined || splits.includes(values.split)
      ? []
      : [cliProblem('CLI_OPTION_VALUE', '--split', { given: values.split, allowed: splits })]),
    ...(operands[0] === '-' && flags.has('write') ? [cliProblem('CLI_WRITE_NOWHERE', '--write')] : []),
  ];
};

/** A list in the book of a call, written where that is asked. */
interface Listed {
  readonly book: Book;
  readonly read?: ReadList;
}

const listed = async (book: Book, call: Call, world: World): Promise<Result<Listed>> => {
  const path = call.values.list;
  if (path === undefined) return { ok: true, value: { book } };
  const read = await readJoinFile(path, book, call, world);
  if (!read.ok) return read;
  const next = readBook(JSON.stringify(withJoins(book, read.value.list.joins)));
  return next.ok ? { ok: true, value: { book: next.value, read: read.value } } : next;
};

const utf8 = new TextEncoder();

/** Writes what was asked to be kept: the book with the joins, and what the headings stood for. */
const kept = async (call: Call, { book, read }: Listed, world: World): Promise<readonly Problem[]> => {
  const { values, flags, operands } = call;
  const [path = '-'] = operands;
  const files: readonly (readonly [string, string])[] = [
    ...(values.remember === undefined || read === undefined
      ? []
      : [[values.remember, `${JSON.stringify(rememberedFrom(read.list.matched), null, 2)}\n`] as const]),
    ...(flags.has('write') ? [[path, writeBook(book)] as const] : []),
  ];
  for (const [name, text] of files) {
    const done = await world.writeBytes(name, utf8.encode(text));
    if (!done.ok) return done.problems;
  }
  return [];
};

/** What became of the code that was typed, in words. */
const codeText = ({ typed, found }: NonNullable<Asked['code']>): string => {
  if (found.is === 'found') return words.say('joins.found', { code: found.code, join: found.join });
  const nearest = found.nearest.map(({ code, join }) => `${code} (${join})`).join(', ');
  return [
    words.say(`joins.${found.is}`, { code: typed }),
    ...(nearest === ''
      ? []
      : [words.say(found.is === 'shared' ? 'joins.sharing' : 'joins.nearest', { nearest })]),
  ].join(' ');
};

const listText = (call: Call, { read }: Listed): readonly string[] => {
  const { list, remember } = call.values;
  const [path = '-'] = call.operands;
  if (read === undefined || list === undefined) return [];
  return [
    joinListText(list, read.list, read.notes),
    call.flags.has('write') ? words.say('joins.written', { path }) : words.say('joins.notWritten'),
    ...(remember === undefined ? [] : [words.say('joins.remembered', { path: remember })]),
  ];
};

/** What travels to the floor that the line is bound for, where that is asked and there is one. */
const packingAsked = (call: Call, book: Book, records: readonly Envelope[]): Packing | undefined =>
  call.flags.has('crates') && (book.floors ?? []).length > 0
    ? packingOf(book, assessBook(book), floorBoundFor(book, undefined), records)
    : undefined;

/** Prints the joins of a book; status 1 where the list contradicts itself, a join is in trouble or a code is not found. */
export const runJoins = async (call: Call, world: World): Promise<Ended> => {
  const [path = '-', recordsPath] = call.operands;
  const inputs = [path, recordsPath, call.values.list].filter((one) => one === '-');
  if (inputs.length > 1) return { problems: [cliProblem('CLI_INPUT_TWICE', '-')] };
  const file = await readBookFile(path, world);
  if (!file.ok) return { problems: file.problems, heading: headingOf(path, file) };
  const wrong = wrongCall(call, file.value);
  if (wrong.length > 0) return { problems: wrong };
  const records: RecordsFile | undefined =
    recordsPath === undefined ? undefined : await readRecordsFile(recordsPath, world);
  if (records?.ok === false) return { problems: records.problems, heading: records.heading };
  const list = await listed(file.value, call, world);
  if (!list.ok) return { problems: list.problems, heading: call.values.list };
  const unkept = await kept(call, list.value, world);
  if (unkept.length > 0) return { problems: unkept };
  const { book, read } = list.value;
  const told = toldJoins(book, records?.value.records ?? []);
  const packing = packingAsked(call, book, records?.value.records ?? []);
  const typed = call.values.code;
  const code = typed === undefined ? undefined : { typed, found: findCode(typed, told.joins) };
  const asked: Asked = {
    code,
    packing,
    list:
      read === undefined
        ? undefined
        : { path: call.values.list ?? '', written: call.flags.has('write'), read },
  };
  const ended = { problems: told.problems, heading: recordsPath };
  if (call.flags.has('json')) {
    const answer = joinsDocument(book, told, asked);
    if (told.problems.length > 0) return { ...ended, answer };
    world.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else if (packing !== undefined) world.out(packingTextOf(book, packing, world));
  else if (code !== undefined) world.out(`${codeText(code)}\n`);
  else
    world.out([...listText(call, list.value), joinsTextOf(book, told, call.values.box, world)].join('\n\n'));
  if (told.problems.length > 0) return ended;
  if ((read?.list.problems.length ?? 0) > 0) return 2;
  if (code !== undefined) return code.found.is === 'found' ? 0 : 1;
  const trouble = [...told.states.values()].some(({ state, conflict }) => state === 'trouble' || conflict);
  return told.faults.length > 0 || trouble ? 1 : 0;
};
