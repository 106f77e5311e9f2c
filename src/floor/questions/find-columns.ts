import type { Tab } from '../../table/table.ts';
import { type ColumnPlaces, type SheetColumn, sheetColumns, usualPlaces } from './sheet-columns.ts';
import type { SheetWords } from './sheet-words.ts';

type Rows = Tab['rows'];

/** Where the columns stand in a sheet that came back, and the place of its first row of answers. */
export interface FoundColumns {
  readonly places: ColumnPlaces;
  readonly from: number;
}

const plain = (text: string): string => text.trim().toLowerCase();

/** A row is that of the headings where it has the id and at least two more, so that no answer passes for one. */
const leastHeadings = 3;

/**
 * Columns by their headings, wherever they were moved to; where a heading was changed, its usual place. Without any
 * row of headings, the first row whose id stands in its usual place begins the answers.
 */
export const findColumns = (rows: Rows, words: SheetWords): FoundColumns | undefined => {
  const headings = sheetColumns.map(
    (column) => [column, plain(words.say(`questionSheet.column.${column}`))] as const,
  );
  for (const [at, row] of rows.entries()) {
    const cells = row.map(plain);
    const found = headings
      .map(([column, heading]) => [column, cells.indexOf(heading)] as const)
      .filter(([, place]) => place >= 0);
    const known = new Map<SheetColumn, number>(found);
    if (!known.has('id') || known.size < leastHeadings) continue;
    const taken = new Set(known.values());
    // a column that is not there and whose place another has taken is read from nowhere
    const places = sheetColumns.map((column) => {
      const usual = usualPlaces[column];
      return [column, known.get(column) ?? (taken.has(usual) ? -1 : usual)] as const;
    });
    return { places: Object.fromEntries(places) as unknown as ColumnPlaces, from: at + 1 };
  }
  const first = rows.findIndex((row) => row[usualPlaces.id]?.trim().startsWith('/') === true);
  return first < 0 ? undefined : { places: usualPlaces, from: first };
};

/** The tab of a file that holds the questions; the first one where none does. */
export const questionTab = (tabs: readonly Tab[], words: SheetWords): Tab =>
  tabs.find(({ rows }) => findColumns(rows, words) !== undefined) ?? tabs[0] ?? { name: '', rows: [] };

/** Whether a sheet has the headings of some words: those of the language in which it went out. */
export const isHeadedBy = (tabs: readonly Tab[], words: SheetWords): boolean => {
  const heading = words.say('questionSheet.column.answer');
  return questionTab(tabs, words).rows.some((row) => row.includes(heading));
};
