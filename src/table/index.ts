export { readCsv } from './csv/read-csv.ts';
export { type Delimiter, writeCsv } from './csv/write-csv.ts';
export { tableProblemText } from './problems.text.ts';
export { type TableProblemCode, tableProblems } from './problems.ts';
export { readTable } from './read-table.ts';
export type { MergedCells, Tab, Table, TableCell, TableColumn, TypedAs } from './table.ts';
export { hasMacros } from './xlsx/has-macros.ts';
export { readXlsx } from './xlsx/read-xlsx.ts';
export { writeXlsx } from './xlsx/write-xlsx.ts';
