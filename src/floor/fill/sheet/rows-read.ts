import type { Problem } from '../../../quantity/problem.ts';

/** Something to be said of a row that was taken. */
export type RowNote =
  /** The lane was named by its number, in the order of the book. */
  'laneByNumber';

export interface TakenRow<T> {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  readonly value: T;
  readonly notes: readonly RowNote[];
}

export interface RowNotUnderstood {
  readonly row: number;
  /** What stands there. */
  readonly given: string;
  readonly problems: readonly Problem[];
}

/** Row by row what a sheet holds: every row below the headings stands in one of the three lists. */
export interface RowsRead<T> {
  readonly taken: readonly TakenRow<T>[];
  readonly notUnderstood: readonly RowNotUnderstood[];
  /** Rows that wait for a bottle: nothing was measured. */
  readonly empty: readonly number[];
  /** Headings that name no column: nothing below them was taken. */
  readonly unknown: readonly string[];
  /** What is wrong with the sheet as a whole. */
  readonly problems: readonly Problem[];
}
