import { type Book, type Join, tagsOf } from '../../book/index.ts';
import type { Kind } from '../../quantity/index.ts';
import { accept, type Problem, type Result, refuse } from '../../quantity/problem.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import type { Tab } from '../../table/index.ts';
import type { JoinKind } from '../join-kinds.ts';
import { joinProblem } from '../problems.ts';
import { filledDown } from './filled-down.ts';
import { kindOfWord } from './kind-words.ts';
import type { ListField } from './list-fields.ts';
import { type MatchedColumns, matchColumns, type RememberedColumns } from './match-columns.ts';

type Writable<T> = { -readonly [K in keyof T]: T[K] };
type Cells = Readonly<Partial<Record<ListField, string>>>;

export interface ListOptions {
  /** What all rows are that do not say it themselves. */
  readonly kind?: JoinKind;
  /** Split at which all rows are parted that do not say it themselves. */
  readonly split?: string;
  readonly remembered?: RememberedColumns;
}

export interface TakenRow {
  /** As a person counts it in the list. */
  readonly row: number;
  readonly tag: string;
  /** The book has this join: what the list says of it goes before what the book said. */
  readonly known: boolean;
}

export interface JoinList {
  readonly matched: MatchedColumns;
  readonly joins: readonly Join[];
  readonly taken: readonly TakenRow[];
  /** Rows that could not be read, each with all that is wrong. */
  readonly problems: readonly Problem[];
  /** Rows without anything in a column that is known. */
  readonly empty: number;
}

const longest = 300;

/** What all rows are held against, made once a list. */
interface Ground {
  readonly book: Book;
  readonly joins: ReadonlyMap<string, Join>;
  readonly others: ReadonlySet<string>;
  readonly sections: readonly string[];
  readonly splits: readonly string[];
  readonly options: ListOptions;
  /** The columns tell that it is a list of wires. */
  readonly ofWires: boolean;
}

const groundOf = (book: Book, { columns }: MatchedColumns, options: ListOptions): Ground => {
  const { joins = [], sections = [], splits = [] } = book.line ?? {};
  return {
    book,
    joins: new Map(joins.map((join) => [join.tag, join])),
    others: new Set(tagsOf(book).flatMap(({ tag, thing }) => (thing === 'join' ? [] : [tag]))),
    sections: sections.map(({ tag }) => tag),
    splits: splits.map(({ tag }) => tag),
    options,
    ofWires: columns.some(({ field }) => field === 'core' || field === 'potential'),
  };
};

const sorts: readonly JoinKind[] = ['conductor', 'tube', 'hose', 'drain', 'duct', 'bond', 'mechanical'];

/** A tag that stays the same when the list is read again: from its own column, its label, its cable and core, its ends. */
const tagOf = ({ tag, label, cable, core, from, to }: Cells): string =>
  tag ??
  (label !== undefined
    ? `J-${label}`
    : cable !== undefined && core !== undefined
      ? `J-${cable}.${core}`
      : `J-${from ?? ''}/${to ?? ''}`);

interface ReadRow {
  readonly row: number;
  readonly cells: Cells;
}

const cellProblems = ({ row, cells }: ReadRow): readonly Problem[] =>
  Object.entries(cells).flatMap(([column, given]): readonly Problem[] => {
    const parts = { row, column };
    if (/^=|^#(?:REF!|N\/A|VALUE!|NAME\?|DIV\/0!|NULL!|NUM!)$/.test(given))
      return [joinProblem('JOIN_ROW_FORMULA', `/${row}/${column}`, { given: given.slice(0, 60), parts })];
    return given.length > longest
      ? [joinProblem('JOIN_ROW_TOO_LONG', `/${row}/${column}`, { allowed: `${longest}`, parts })]
      : [];
  });

const kinds: readonly (readonly [ListField & ('length' | 'torque'), Kind])[] = [
  ['length', 'length'],
  ['torque', 'torque'],
];

const quantityProblems = ({ row, cells }: ReadRow): readonly Problem[] =>
  kinds.flatMap(([column, kind]) => {
    const given = cells[column];
    if (given === undefined || readEntry(given, kind, { path: '' }).ok) return [];
    return [joinProblem('JOIN_ROW_QUANTITY', `/${row}/${column}`, { given, parts: { row, column } })];
  });

const placeProblems = ({ row, cells }: ReadRow, { sections, splits }: Ground): readonly Problem[] =>
  (
    [
      ['fromSection', sections],
      ['toSection', sections],
      ['split', splits],
    ] as const
  ).flatMap(([column, allowed]) => {
    const given = cells[column];
    if (given === undefined || allowed.includes(given)) return [];
    return [joinProblem('JOIN_ROW_PLACE', `/${row}/${column}`, { given, allowed, parts: { row } })];
  });

/** What the row is, or why that can't be told. */
const kindOfRow = ({ row, cells }: ReadRow, { options, ofWires }: Ground): JoinKind | Problem => {
  if (cells.kind !== undefined) {
    const kind = kindOfWord(cells.kind);
    const rest = { given: cells.kind, allowed: sorts, parts: { row } };
    return kind ?? joinProblem('JOIN_ROW_KIND', `/${row}/kind`, rest);
  }
  if (options.kind !== undefined) return options.kind;
  return ofWires
    ? 'conductor'
    : joinProblem('JOIN_ROW_NO_KIND', `/${row}`, { allowed: sorts, parts: { row } });
};

const endFrom = (section?: string, size?: string, colour?: string): Join['fromEnd'] => {
  const end = {
    ...(section === undefined ? {} : { section }),
    ...(size === undefined ? {} : { size }),
    ...(colour === undefined ? {} : { colour }),
  };
  return Object.keys(end).length === 0 ? undefined : end;
};

const joinOf = (tag: string, kind: JoinKind, cells: Cells, { options }: Ground): Join => {
  const {
    fromSection,
    toSection,
    fromSize,
    toSize,
    fromColour,
    toColour,
    kind: _k,
    tag: _t,
    ...rest
  } = cells;
  const split = cells.split ?? options.split;
  const join: Writable<Join> = { tag, kind, ...rest };
  if (split !== undefined) join.split = split;
  const [fromEnd, toEnd] = [endFrom(fromSection, fromSize, fromColour), endFrom(toSection, toSize, toColour)];
  if (fromEnd !== undefined) join.fromEnd = fromEnd;
  if (toEnd !== undefined) join.toEnd = toEnd;
  return join;
};

const rowsOf = (tab: Tab, { header, columns }: MatchedColumns): readonly ReadRow[] => {
  const fields = columns.flatMap(({ column, field }) =>
    field === undefined ? [] : [[column, field] as const],
  );
  return filledDown(tab)
    .slice(header + 1)
    .map((row, i) => ({
      row: header + i + 2,
      cells: Object.fromEntries(
        fields.flatMap(([column, field]) => {
          const text = (row[column] ?? '').trim();
          return text === '' ? [] : [[field, text]];
        }),
      ),
    }));
};

/**
 * The joins of a wire or tube list, row by row, with a report of what could not be read.
 *
 * Method   columns by their headings, remembered before guessed; a row is taken whole or not at all. The tag follows from
 *          the row itself, so that a list that is read again changes joins and adds none twice
 * Symbols  tab  a tab as `readTable` gives it;  book  what the rows are held against
 * Problems JOIN_LIST_NO_HEADER, JOIN_LIST_NO_ROWS; those of rows stand in the list itself
 * Cost     O(cells)
 */
export const readJoinList = (tab: Tab, book: Book, options: ListOptions = {}): Result<JoinList> => {
  const matched = matchColumns(tab, options.remembered ?? {});
  if (matched === undefined)
    return refuse(
      joinProblem('JOIN_LIST_NO_HEADER', '', { allowed: ['from', 'to', 'von', 'nach', 'desde', 'de'] }),
    );
  const ground = groundOf(book, matched, options);
  const rows = rowsOf(tab, matched);
  const full = rows.filter(({ cells }) => Object.keys(cells).length > 0);
  if (full.length === 0) return refuse(joinProblem('JOIN_LIST_NO_ROWS', ''));
  const first = new Map<string, number>();
  const joins: Join[] = [];
  const taken: TakenRow[] = [];
  const problems: Problem[] = [];
  for (const one of full) {
    const { row, cells } = one;
    const unread = cellProblems(one);
    // a cell of a whole page of text says nothing, and is not handed on in what is told of its row
    if (Object.values(cells).some((text) => text.length > longest)) {
      problems.push(...unread);
      continue;
    }
    const tag = tagOf(cells);
    const kind = kindOfRow(one, ground);
    const before = first.get(tag);
    const wrong = [
      ...(cells.from === undefined && cells.to === undefined
        ? [joinProblem('JOIN_ROW_NO_END', `/${row}`, { parts: { row } })]
        : []),
      ...(typeof kind === 'string' ? [] : [kind]),
      ...unread,
      ...quantityProblems(one),
      ...placeProblems(one, ground),
      ...(before === undefined
        ? []
        : [joinProblem('JOIN_ROW_TAG_TWICE', `/${row}`, { given: tag, parts: { row, first: before } })]),
      ...(ground.others.has(tag)
        ? [joinProblem('JOIN_ROW_TAG_TAKEN', `/${row}`, { given: tag, parts: { row } })]
        : []),
    ];
    if (wrong.length > 0 || typeof kind !== 'string') {
      problems.push(...wrong);
      continue;
    }
    first.set(tag, row);
    taken.push({ row, tag, known: ground.joins.has(tag) });
    joins.push({ ...ground.joins.get(tag), ...joinOf(tag, kind, cells, ground) });
  }
  return accept({ matched, joins, taken, problems, empty: rows.length - full.length });
};

/** The book with the joins of a list: those that it has in their place, the others behind them. */
export const withJoins = (book: Book, joins: readonly Join[]): Book => {
  const given = new Map(joins.map((join) => [join.tag, join]));
  const old = book.line?.joins ?? [];
  const known = new Set(old.map(({ tag }) => tag));
  return {
    ...book,
    line: {
      ...book.line,
      joins: [
        ...old.map((join) => given.get(join.tag) ?? join),
        ...joins.filter(({ tag }) => !known.has(tag)),
      ],
    },
  };
};
