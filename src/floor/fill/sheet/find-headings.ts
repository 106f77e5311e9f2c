import { findUnit } from '../../../quantity/unit-lookup.ts';
import type { Tab } from '../../../table/table.ts';
import type { SheetWords } from '../../questions/sheet-words.ts';
import type { FillColumn } from './columns.ts';

/** Where a column stands, and the unit that its heading names. */
export interface FoundColumn {
  readonly column: FillColumn;
  readonly at: number;
  readonly unit?: string;
}

export interface FoundHeadings {
  readonly columns: readonly FoundColumn[];
  /** Index of the row of headings. */
  readonly row: number;
  /** Headings that name no column. */
  readonly unknown: readonly string[];
}

/** Compared without regard to case, spaces, dashes and underlines. */
export const plain = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s_-]+/g, ' ')
    .trim();

/** The ways to part a heading into name and unit: `gross (kg)`, `gross [kg]`, `gross, kg`, `gross in kg`, `gross_kg`. */
const parted = (heading: string): readonly (readonly [name: string, unit?: string])[] => {
  const text = heading.trim();
  const forms = [
    /^(.+?)\s*\((.+)\)$/,
    /^(.+?)\s*\[(.+)\]$/,
    /^(.+?)\s*[,/]\s*(.+)$/,
    /^(.+?)\s+in\s+(.+)$/i,
    /^(.+)[\s_]+(\S+)$/,
  ];
  return [
    [text],
    ...forms.flatMap((form) => {
      const match = form.exec(text);
      return match === null ? [] : [[match[1]!, match[2]!] as const];
    }),
  ];
};

/** Names by which people call each column, in their plain form. */
const namesOf = ({ field }: FillColumn, words: SheetWords): readonly string[] => [
  plain(words.say(`fillSheet.column.${field}`)),
  // as the record calls it, so that a list of records turned into a table is read back
  plain(field),
  plain(field.replace(/([A-Z])/g, ' $1')),
  ...(words.has(`fillSheet.also.${field}`) ? words.say(`fillSheet.also.${field}`).split('|').map(plain) : []),
];

const matchOf = (
  heading: string,
  names: readonly (readonly [FillColumn, readonly string[]])[],
): Omit<FoundColumn, 'at'> | undefined => {
  // the name that the tool itself writes goes before what another column is also called
  for (const [name, unit] of parted(heading)) {
    const text = plain(name);
    const own = names.find(([, [first]]) => first === text) ?? names.find(([, all]) => all.includes(text));
    if (own === undefined) continue;
    const [column] = own;
    if (unit === undefined) return { column };
    // a unit that is none of its kind is kept: each cell then says what is wrong with it
    if (column.form.is !== 'quantity') continue;
    const bracketed = /[([]/.test(heading);
    if (bracketed || findUnit(column.form.kind, unit) !== undefined) return { column, unit };
  }
  return undefined;
};

/** Rows at the top in which headings are looked for: above them stand a title and how to fill in the sheet. */
const topRows = 40;

/**
 * The row of headings of a sheet and where each column stands, in any order.
 *
 * Method   the first row that has all columns which must be there
 * Symbols  needed  fields of which each must have a column
 * Returns  undefined where no row is one of headings
 */
export const findHeadings = (
  rows: Tab['rows'],
  columns: readonly FillColumn[],
  needed: readonly string[],
  words: SheetWords,
): FoundHeadings | undefined => {
  const names = columns.map((column) => [column, namesOf(column, words)] as const);
  for (const [row, cells] of rows.slice(0, topRows).entries()) {
    const found: FoundColumn[] = [];
    const unknown: string[] = [];
    for (const [at, heading] of cells.entries()) {
      if (heading.trim() === '') continue;
      const free = names.filter(([column]) => !found.some((one) => one.column === column));
      const match = matchOf(heading, free);
      if (match === undefined) unknown.push(heading.trim());
      else found.push({ ...match, at });
    }
    if (needed.every((field) => found.some(({ column }) => column.field === field))) {
      return { columns: found, row, unknown };
    }
  }
  return undefined;
};
