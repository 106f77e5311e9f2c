export { type BookAsFound, bookAsFound, type Laid } from './book-as-found.ts';
export { foundProblemText } from './problems.text.ts';
export {
  type FindingShift,
  type PromisedAndFound,
  promisedAndFound,
  type Touched,
} from './promised-and-found.ts';
export type { FoundReading } from './reading.ts';
export { onTemporarySupply } from './temporary-supply.ts';
