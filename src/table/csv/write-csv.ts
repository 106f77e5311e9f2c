import type { Table } from '../table.ts';
import { withGuard } from './formula-guard.ts';

export type Delimiter = ',' | ';' | '\t';

/** Quoted where a reader could see more than one cell in it, or trim it. */
const quoted = (text: string): string =>
  /[",;\t\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

/**
 * A table as text: RFC 4180 with a byte order mark, by which spreadsheets know UTF-8.
 *
 * Symbols  delimiter  a semicolon where the decimal mark is a comma, since spreadsheets there expect it
 * Returns  the lines of the lead, the headings, the rows; a text that could be a formula carries an apostrophe
 */
export const writeCsv = (table: Table, delimiter: Delimiter = ','): string => {
  const lines: readonly (readonly string[])[] = [
    ...(table.lead ?? []).map((line) => [line]),
    table.columns.map(({ heading }) => heading),
    ...table.rows.map((row) => row.map(({ text }) => text)),
  ];
  const text = lines.map((line) => line.map((cell) => quoted(withGuard(cell))).join(delimiter)).join('\r\n');
  return `\ufeff${text}\r\n`;
};
