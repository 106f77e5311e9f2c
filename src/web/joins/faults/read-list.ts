import type { Book } from '../../../book/index.ts';
import {
  type JoinList,
  joinProblem,
  type ListField,
  type ListOptions,
  readJoinList,
} from '../../../joins/index.ts';
import { plainHeading } from '../../../joins/list/headings.ts';
import { accept, type Problem, type Result, refuse } from '../../../quantity/problem.ts';
import { type Encoding, hasMacros, readTable, type Tab } from '../../../table/index.ts';
import { limits } from '../../../table/limits.ts';

/** One column of a list as it is offered to be matched. */
export interface OfferedColumn {
  readonly column: number;
  readonly heading: string;
  /** What its heading is remembered by. */
  readonly key: string;
  /** First texts below the heading. */
  readonly samples: readonly string[];
  readonly field?: ListField;
  readonly by: 'remembered' | 'guessed' | 'nothing';
}

export interface ListRead {
  readonly tab: string;
  readonly columns: readonly OfferedColumn[];
  /** Absent: the columns must be matched first. */
  readonly list?: JoinList;
  readonly notes: readonly Problem[];
  /** How its letters were read where the file does not say it, and what of them shows whether that is right. */
  readonly letters?: { readonly taken: Encoding; readonly samples: readonly string[] };
}

/** A text of a list as it is shown among others: a cell may hold a whole page. */
const mostLetters = 60;
const shortened = (text: string): string =>
  text.length > mostLetters ? `${text.slice(0, mostLetters)}…` : text;

const mostSamples = 3;
const firstRows = 40;

const samplesOf = ({ rows }: Tab, header: number, column: number): readonly string[] => {
  const texts = new Set<string>();
  for (const row of rows.slice(header + 1, header + firstRows)) {
    const text = shortened((row[column] ?? '').trim());
    if (text !== '' && texts.size < mostSamples) texts.add(text);
  }
  return [...texts];
};

const filled = (row: readonly string[]): number => row.filter((cell) => cell.trim() !== '').length;

/** Where no heading is known: the first of the fullest rows at the top, since a title block has few cells. */
const likelyHeader = ({ rows }: Tab): number => {
  const counts = rows.slice(0, firstRows).map(filled);
  return Math.max(0, counts.indexOf(Math.max(...counts)));
};

const columnsOf = (tab: Tab, list: JoinList | undefined): readonly OfferedColumn[] => {
  const header = list?.matched.header ?? likelyHeader(tab);
  const known = new Map(list?.matched.columns.map((one) => [one.column, one]));
  return (tab.rows[header] ?? []).flatMap((heading, column): readonly OfferedColumn[] => {
    if (heading.trim() === '') return [];
    const { field, by = 'nothing' } = known.get(column) ?? {};
    const offered = {
      column,
      heading: shortened(heading),
      key: plainHeading(heading),
      samples: samplesOf(tab, header, column),
      by,
    };
    return [field === undefined ? offered : { ...offered, field }];
  });
};

/** Texts of a list that would look odd, were its letters read wrongly. */
const lettersOf = ({ rows, taken }: Tab): Pick<ListRead, 'letters'> => {
  if (taken === undefined) return {};
  const odd = new Set<string>();
  for (const cell of rows.flat()) {
    if (odd.size < mostSamples && /[\u{80}-\u{10ffff}]/u.test(cell)) odd.add(shortened(cell.trim()));
  }
  return { letters: { taken, samples: [...odd] } };
};

/** A wire or tube list off a file: the first tab in which headings are known, else the first, to be matched by hand. */
export const readList = (
  bytes: Uint8Array,
  book: Book,
  options: ListOptions,
  said?: Encoding,
): Result<ListRead> => {
  const tabs = readTable(bytes, said);
  if (!tabs.ok) return tabs;
  const notes = hasMacros(bytes) ? [joinProblem('JOIN_LIST_MACROS', '')] : [];
  let empty: readonly Problem[] = [joinProblem('JOIN_LIST_NO_ROWS', '')];
  for (const tab of tabs.value) {
    const read = readJoinList(tab, book, options);
    if (read.ok)
      return accept({
        tab: tab.name,
        columns: columnsOf(tab, read.value),
        list: read.value,
        notes,
        ...lettersOf(tab),
      });
    if (read.problems.some(({ code }) => code === 'JOIN_LIST_NO_ROWS')) empty = read.problems;
  }
  const unmatched = tabs.value.find(({ rows }) => rows.some((row) => filled(row) > 1));
  return unmatched === undefined
    ? refuse(...empty)
    : accept({
        tab: unmatched.name,
        columns: columnsOf(unmatched, undefined),
        notes,
        ...lettersOf(unmatched),
      });
};

/** Bytes beyond which a file is not even read into memory. */
export const mostBytes = limits.file;
