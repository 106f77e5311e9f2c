export { type FillTableOptions, lotTable, type OpenTrial, sampleTable, trialTable } from './fill-tables.ts';
export { type LotRead, readLotTable } from './read-lot-table.ts';
export { readSampleTable } from './read-sample-table.ts';
export { readTrialTable, type UsualOfSheet } from './read-trial-table.ts';
export type { RowNote, RowNotUnderstood, RowsRead, TakenRow } from './rows-read.ts';
export { fillSheetWords } from './sheet-words.text.ts';
