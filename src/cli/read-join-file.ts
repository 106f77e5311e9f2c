import * as z from 'zod';
import type { Book } from '../book/index.ts';
import {
  type JoinKind,
  type JoinList,
  joinProblem,
  listFields,
  type RememberedColumns,
  readJoinList,
} from '../joins/index.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { type Encoding, hasMacros, readTable, type Tab } from '../table/index.ts';
import { limits } from '../table/limits.ts';
import type { Call } from './command.ts';
import { largestFile, readText } from './read-text.ts';
import type { World } from './world.ts';

const columnsSchema = z.record(z.string(), z.enum([...listFields, '']));

/** What headings stand for, out of a file that was written after another list. */
const rememberedOf = async (path: string | undefined, world: World): Promise<Result<RememberedColumns>> => {
  if (path === undefined) return accept({});
  const text = await readText(path, world, { what: 'columns', most: largestFile });
  if (!text.ok) return text;
  let given: unknown;
  try {
    given = JSON.parse(text.value);
  } catch {
    given = undefined;
  }
  const read = columnsSchema.safeParse(given);
  if (read.success) return accept(read.data);
  return refuse(joinProblem('JOIN_COLUMNS_UNREADABLE', path, { allowed: listFields }));
};

const tabsOf = (tabs: readonly Tab[], name: string | undefined): Result<readonly Tab[]> => {
  if (name === undefined) return accept(tabs);
  const named = tabs.filter((tab) => tab.name === name);
  return named.length > 0
    ? accept(named)
    : refuse(
        joinProblem('JOIN_LIST_TAB_UNKNOWN', '--tab', { given: name, allowed: tabs.map((tab) => tab.name) }),
      );
};

/** The joins of a list, and what is to be said beside it. */
export interface ReadList {
  readonly list: JoinList;
  readonly notes: readonly Problem[];
}

/** Reads the list of a call: the tab that was named, or the first that reads. */
export const readJoinFile = async (
  path: string,
  book: Book,
  { values: { tab, kind, split, columns, encoding } }: Call,
  world: World,
): Promise<Result<ReadList>> => {
  const remembered = await rememberedOf(columns, world);
  if (!remembered.ok) return remembered;
  const bytes = await world.readBytes(path, limits.file);
  if (!bytes.ok) return bytes;
  const table = readTable(bytes.value, encoding as Encoding | undefined);
  if (!table.ok) return table;
  const tabs = tabsOf(table.value, tab);
  if (!tabs.ok) return tabs;
  const options = {
    remembered: remembered.value,
    ...(kind === undefined ? {} : { kind: kind as JoinKind }),
    ...(split === undefined ? {} : { split }),
  };
  const read = tabs.value.map((one) => readJoinList(one, book, options));
  const first = read.find((one) => one.ok) ?? read[0];
  if (first === undefined) return refuse(joinProblem('JOIN_LIST_NO_ROWS', path));
  if (!first.ok) return first;
  const taken = encoding === undefined ? tabs.value[0]?.taken : undefined;
  const notes = [
    ...(hasMacros(bytes.value) ? [joinProblem('JOIN_LIST_MACROS', path)] : []),
    ...(taken === undefined ? [] : [joinProblem('JOIN_LIST_ENCODING', path, { given: taken })]),
  ];
  return accept({ list: first.value, notes });
};
