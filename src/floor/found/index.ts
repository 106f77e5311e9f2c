export { type BookAsFound, bookAsFound, type Laid } from './book-as-found.ts';
export { type FindingShift, type PromisedAndFound, promisedAndFound } from './promised-and-found.ts';
export type { FoundReading } from './reading.ts';
export { onTemporarySupply } from './temporary-supply.ts';
