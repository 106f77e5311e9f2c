import type { Encoding } from './csv/encodings.ts';

/** What a spreadsheet's own program is to make of what is typed into a column. */
export type TypedAs = 'text' | 'day';

export interface TableColumn {
  readonly heading: string;
  /** In characters of the usual letter. */
  readonly width: number;
  /** `day`: a day in the order of the typist's country becomes a true date. Absent: text, kept as typed. */
  readonly typedAs?: TypedAs;
  /** Held back from the eye, for what only the program reads. */
  readonly hidden?: boolean;
}

export interface TableCell {
  readonly text: string;
  /** May be written into; all other cells are locked. */
  readonly open?: boolean;
  /** Offered as a drop-down; another text may still be typed. */
  readonly choices?: readonly string[];
}

/** One table to be written: a heading for each column, then rows of cells. */
export interface Table {
  /** Name of the tab. */
  readonly name: string;
  /** Lines above the headings: how the table is to be filled in. */
  readonly lead?: readonly string[];
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly TableCell[])[];
}

/**
 * A tab as it was read. Row n of the spreadsheet stands at n - 1, empty ones too, so that a report can name the row
 * that a person sees; a row ends at its last cell that holds something.
 */
export interface Tab {
  /** Empty for a text file. */
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
  /** Cells that were merged into one, of which the first holds the text. Absent: none. */
  readonly merged?: readonly MergedCells[];
  /** How the letters of a text file were taken to be written. Absent: it is told by the file itself. */
  readonly taken?: Encoding;
}

/** Rows and columns from 0, the last ones included. */
export interface MergedCells {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}
