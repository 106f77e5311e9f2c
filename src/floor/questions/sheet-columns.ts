/** Columns of a question sheet in the order in which they are written. */
export const sheetColumns = ['number', 'question', 'answer', 'unit', 'by', 'on', 'remark', 'id'] as const;

export type SheetColumn = (typeof sheetColumns)[number];

export type ColumnPlaces = Readonly<Record<SheetColumn, number>>;

/** Where each column is written. */
export const usualPlaces = Object.fromEntries(sheetColumns.map((column, at) => [column, at])) as ColumnPlaces;
