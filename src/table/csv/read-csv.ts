import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { problemOf } from '../problem-of.ts';
import { rowList } from '../row-list.ts';
import type { Tab } from '../table.ts';
import { cutCsv } from './cut-csv.ts';
import { delimiterOf } from './delimiter-of.ts';
import { withoutGuard } from './formula-guard.ts';

/** A first line that names the delimiter, as one spreadsheet program writes and hides it. */
const named = /^sep=([,;\t])\r?\n/i;

/**
 * Cells of a text file: comma, semicolon or tab between them, quoted or not, with or without a byte order mark.
 *
 * Returns  one tab; an apostrophe that kept a text from being a formula is gone
 * Problems TABLE_QUOTE_OPEN, TABLE_TOO_MANY_CELLS
 * Cost     O(length)
 */
export const readCsv = (text: string): Result<Tab> => {
  const whole = text.startsWith('\ufeff') ? text.slice(1) : text;
  const line = named.exec(whole);
  const body = line === null ? whole : whole.slice(line[0].length);
  const { records, open } = cutCsv(body, line?.[1] ?? delimiterOf(body));
  if (open !== undefined) return refuse(problemOf('TABLE_QUOTE_OPEN', '', { parts: { row: open } }));
  const list = rowList();
  for (const [row, record] of records.entries()) {
    for (const [column, cell] of record.entries()) {
      const problem = list.put(row, column, withoutGuard(cell));
      if (problem !== undefined) return refuse(problem);
    }
  }
  return accept({ name: '', rows: list.rows() });
};
