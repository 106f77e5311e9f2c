import type { Problem } from '../quantity/problem.ts';
import { type Source, sourceName } from './frame.ts';

/** A value between or beside the rows of a table. */
export const offTable = (
  path: string,
  given: unknown,
  rows: readonly (string | number)[],
  table: Source,
): Problem => ({
  code: 'SHEET_OFF_TABLE',
  path,
  given,
  allowed: rows.map(String),
  parts: { table: sourceName(table) },
});

/** A value beyond the last row of a table. */
export const beyondTable = (path: string, given: unknown, limit: string, table: Source): Problem => ({
  code: 'SHEET_BEYOND_TABLE',
  path,
  given,
  allowed: limit,
  parts: { table: sourceName(table) },
});
