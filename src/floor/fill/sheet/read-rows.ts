import type { Problem } from '../../../quantity/problem.ts';
import type { Tab } from '../../../table/table.ts';
import type { SheetWords } from '../../questions/sheet-words.ts';
import type { FillColumn } from './columns.ts';
import { findHeadings } from './find-headings.ts';
import { type CellValue, readCell } from './read-cell.ts';

/** The values of a row by field, or what is wrong with it. */
export interface ReadRow {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  /** What stands in the row, for the report. */
  readonly given: string;
  readonly values: Readonly<Record<string, CellValue>>;
  readonly problems: readonly Problem[];
}

export interface ReadRows {
  readonly rows: readonly ReadRow[];
  /** Headings that name no column: nothing of them was taken. */
  readonly unknown: readonly string[];
  /** Whether a row of headings was found at all. */
  readonly headed: boolean;
}

export interface ReadRowsOptions {
  readonly words: SheetWords;
  /** Language of whoever typed, for a comma that may be either. */
  readonly locale?: string;
}

/** Every row below the headings, cell by cell; empty rows are passed over. */
export const readRows = (
  rows: Tab['rows'],
  columns: readonly FillColumn[],
  needed: readonly string[],
  { words, locale }: ReadRowsOptions,
): ReadRows => {
  const headings = findHeadings(rows, columns, needed, words);
  if (headings === undefined) return { rows: [], unknown: [], headed: false };
  const read = rows.slice(headings.row + 1).flatMap((cells, i): readonly ReadRow[] => {
    const given = cells
      .map((cell) => cell.trim())
      .filter((cell) => cell !== '')
      .join(' ');
    if (given === '') return [];
    const values: Record<string, CellValue> = {};
    const problems: Problem[] = [];
    for (const { column, at, unit } of headings.columns) {
      const text = (cells[at] ?? '').trim();
      if (text === '') continue;
      const value = readCell(text, column.form, unit, column.field, words, locale);
      if (value.ok) values[column.field] = value.value;
      else problems.push(...value.problems);
    }
    return [{ row: headings.row + i + 2, given: given.slice(0, 160), values, problems }];
  });
  return { rows: read, unknown: headings.unknown, headed: true };
};
