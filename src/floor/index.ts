export { type AssessOptions, assessBook } from './assess-book.ts';
export type * from './assessment.ts';
export {
  type BookComparison,
  compareBooks,
  type FigureMove,
  type FindingMove,
  type FloorMoves,
} from './compare-books.ts';
export { type FigureId, figureKinds } from './figure-values.ts';
export { eachRemedy, type RemedyQuestion, remediesFor } from './remedies/remedies-for.ts';
export { remediesOf } from './remedies/remedies-of.ts';
