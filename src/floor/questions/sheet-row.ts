import type { Problem } from '../../quantity/problem.ts';
import { problemOf } from './problem-of.ts';
import type { ColumnPlaces, SheetColumn } from './sheet-columns.ts';

/** One row of a sheet that came back, by column, without spaces around. */
export type SheetRow = Readonly<Record<SheetColumn, string>> & {
  /** As the spreadsheet numbers it. */
  readonly row: number;
};

export const sheetRow = (cells: readonly string[], places: ColumnPlaces, row: number): SheetRow => {
  const cell = (column: SheetColumn): string => (cells[places[column]] ?? '').trim();
  return {
    row,
    number: cell('number'),
    question: cell('question'),
    answer: cell('answer'),
    unit: cell('unit'),
    by: cell('by'),
    on: cell('on'),
    remark: cell('remark'),
    id: cell('id'),
  };
};

const dayForm = /^(\d{4})-(\d{2})-(\d{2})(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?)?$/;

/** What is wrong with the day of an answer: 8.3.2027 is March to one reader and August to another. */
export const dayProblem = (path: string, on: string): Problem | undefined => {
  const match = dayForm.exec(on);
  const day = on.slice(0, 10);
  const moment = Date.parse(`${day}T00:00:00Z`);
  const isDay = match !== null && !Number.isNaN(moment) && new Date(moment).toISOString().startsWith(day);
  return on === '' || isDay ? undefined : problemOf('ANSWER_DAY', path, { given: on, allowed: 'YYYY-MM-DD' });
};
