import type { Table } from '../table.ts';
import { placeName } from './place-name.ts';

/** Cells that offer the same texts. */
export interface ChoiceList {
  readonly choices: readonly string[];
  readonly cells: readonly string[];
}

/**
 * The different lists of a table with the cells that offer them.
 *
 * Symbols  from  row, from 0, on which the rows of the table begin
 */
export const choiceLists = (table: Table, from: number): readonly ChoiceList[] => {
  const lists = new Map<string, { choices: readonly string[]; cells: string[] }>();
  for (const [row, cells] of table.rows.entries()) {
    for (const [column, { choices = [] }] of cells.entries()) {
      const offered = choices.filter((choice) => choice !== '');
      if (offered.length === 0) continue;
      const key = JSON.stringify(offered);
      const list = lists.get(key) ?? { choices: offered, cells: [] };
      list.cells.push(placeName(from + row, column));
      lists.set(key, list);
    }
  }
  return [...lists.values()];
};
