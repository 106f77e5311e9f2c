export type { PaperKind } from '../book/paper-kinds.ts';
export { makeTypesetter, type Typesetter } from './frame/typst-compiler.ts';
export { labelStock } from './labels/label-stock.ts';
export type { PageSize, PaperOptions } from './paper-head.ts';
export { makePaperWords } from './paper-words.ts';
export { printLabels } from './print-labels.ts';
export { type PaperAsked, type PrintedPaper, printPaper } from './print-paper.ts';
export { takenPictures, wantedPictures } from './schedule/wanted-pictures.ts';
