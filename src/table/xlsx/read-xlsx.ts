import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';
import type { Tab } from '../table.ts';
import { unpack } from './packing.ts';
import { readTab } from './read-tab.ts';
import { workbookParts } from './workbook-parts.ts';
import { type ZipEntry, zipEntries } from './zip-entries.ts';

/** Readers differ on the case of a part's name; ECMA-376 part 2 says that it does not count. */
const byLowerCase = (entries: ReadonlyMap<string, ZipEntry>): ReadonlyMap<string, ZipEntry> =>
  new Map([...entries].map(([name, entry]) => [name.toLowerCase(), entry]));

/** Tabs beyond any form; a part may be named by many of them and would be read each time. */
const mostTabs = 50;

/**
 * Every tab of a spreadsheet (ECMA-376, xlsx), as rows of text.
 *
 * Method   the directory is held against the limits before anything is unpacked; then only the parts with texts,
 *          styles and cells are, each held to its stated size
 * Problems all of `problems.ts` but those of text files
 * Cost     O(size of the parts that are read), which the limits bound
 */
export const readXlsx = (bytes: Uint8Array): Result<readonly Tab[]> => {
  const listed = zipEntries(bytes);
  if (!listed.ok) return listed;
  const entries = byLowerCase(listed.value);
  const textOf = (name: string): Result<string> | undefined => {
    const entry = entries.get(name.toLowerCase());
    return entry === undefined ? undefined : unpack(bytes, entry);
  };
  const book = workbookParts(textOf);
  if (!book.ok) return book;
  if (book.value.tabs.length > mostTabs) {
    const more = { given: `${book.value.tabs.length} tabs`, allowed: `${mostTabs} tabs` };
    return refuse(problemOf('TABLE_TOO_MANY_CELLS', '', more));
  }
  const known = new Map<string, Result<Tab>>();
  const tabs: Tab[] = [];
  for (const { name, part } of book.value.tabs) {
    const text = known.has(part) ? undefined : textOf(part);
    if (text === undefined && !known.has(part))
      return refuse(problemOf('TABLE_NOT_XLSX', '', { allowed: part }));
    if (text?.ok === false) return text;
    const tab =
      known.get(part) ?? (text === undefined ? undefined : readTab(name, part, text.value, book.value));
    if (tab === undefined) continue;
    known.set(part, tab);
    if (!tab.ok) return tab;
    tabs.push({ ...tab.value, name });
  }
  return accept(tabs);
};
