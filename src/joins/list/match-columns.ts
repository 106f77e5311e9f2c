import type { Tab } from '../../table/index.ts';
import { fieldOfHeading, plainHeading } from './headings.ts';
import type { ListField } from './list-fields.ts';

/** What headings stood for the last time; `''` for one that is passed over. Kept as data between two lists. */
export type RememberedColumns = Readonly<Record<string, ListField | ''>>;

export interface MatchedColumn {
  /** From 0. */
  readonly column: number;
  readonly heading: string;
  /** Absent: the column is passed over. */
  readonly field?: ListField;
  readonly by: 'remembered' | 'guessed' | 'nothing';
}

export interface MatchedColumns {
  /** Place of the row of headings, from 0. */
  readonly header: number;
  readonly columns: readonly MatchedColumn[];
}

/** Rows at the top in which headings are looked for: lists begin with a title block. */
const firstRows = 40;

const matchRow = (row: readonly string[], remembered: RememberedColumns): readonly MatchedColumn[] => {
  const taken = new Set<ListField>();
  return row.flatMap((heading, column): readonly MatchedColumn[] => {
    if (heading.trim() === '') return [];
    const key = plainHeading(heading);
    const known = Object.hasOwn(remembered, key) ? remembered[key] : undefined;
    const field = known === '' ? undefined : (known ?? fieldOfHeading(heading));
    const by = known !== undefined ? 'remembered' : field === undefined ? 'nothing' : 'guessed';
    // of two columns with one heading the first counts
    if (field === undefined || taken.has(field))
      return [{ column, heading, by: known === '' ? by : 'nothing' }];
    taken.add(field);
    return [{ column, heading, field, by }];
  });
};

const known = (columns: readonly MatchedColumn[]): number =>
  columns.filter(({ field }) => field !== undefined).length;

const hasEnd = (columns: readonly MatchedColumn[]): boolean =>
  columns.some(({ field }) => field === 'from' || field === 'to');

/**
 * The row of headings of a list, and what each column holds.
 *
 * Method   of the first rows the one in which most headings are known, an end among them; what was remembered of a
 *          heading goes before the guess
 * Returns  undefined where no row has two known headings with an end among them
 */
export const matchColumns = ({ rows }: Tab, remembered: RememberedColumns): MatchedColumns | undefined => {
  const looks = rows
    .slice(0, firstRows)
    .map((row, header) => ({ header, columns: matchRow(row, remembered) }))
    .filter(({ columns }) => known(columns) >= 2 && hasEnd(columns));
  return looks.sort((a, b) => known(b.columns) - known(a.columns) || a.header - b.header)[0];
};

/** What the columns of a list stood for, to be remembered for the next one. */
export const rememberedFrom = ({ columns }: MatchedColumns): RememberedColumns =>
  Object.fromEntries(columns.map(({ heading, field }) => [plainHeading(heading), field ?? '']));
