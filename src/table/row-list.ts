import type { Problem } from '../quantity/problem.ts';
import { limits } from './limits.ts';
import { problemOf } from './problem-of.ts';

/** Collects cells by place; empty ones leave no trace, wherever they stand. */
export interface RowList {
  /** Puts a text at a row and column counted from 0. */
  readonly put: (row: number, column: number, text: string) => Problem | undefined;
  readonly rows: () => readonly (readonly string[])[];
}

const tooMany = (given: string, allowed: number, of: string): Problem =>
  problemOf('TABLE_TOO_MANY_CELLS', '', { given, allowed: `${allowed} ${of}` });

export const rowList = (): RowList => {
  const rows: string[][] = [];
  let cells = 0;
  return {
    put: (row, column, text) => {
      if (text === '') return undefined;
      cells += 1;
      if (row >= limits.rows) return tooMany(`row ${row + 1}`, limits.rows, 'rows');
      if (column >= limits.columns) return tooMany(`column ${column + 1}`, limits.columns, 'columns');
      if (cells > limits.cells) return tooMany(`${cells} cells`, limits.cells, 'cells');
      while (rows.length <= row) rows.push([]);
      const cellsOfRow = rows[row] as string[];
      while (cellsOfRow.length < column) cellsOfRow.push('');
      cellsOfRow[column] = text;
      return undefined;
    },
    rows: () => rows,
  };
};
