import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** One filled bottle of a lot. */
export interface RecordedPackage {
  readonly gross: string;
  readonly tare?: string;
  readonly lane?: string;
  readonly bottle?: string;
  readonly at?: string;
}

/** What a record says of the bottles that were drawn from a lot, as plain data; quantities as they were typed. */
export interface RecordedLot {
  /** Id of the record: a correction names it. */
  readonly id: string;
  readonly at?: string;
  readonly floor: string;
  readonly format: string;
  readonly packages: readonly RecordedPackage[];
  readonly by?: string;
  /** Bottles in the lot. */
  readonly size?: number;
  readonly product?: string;
  readonly temperature?: string;
  readonly density?: string;
  readonly tares?: readonly string[];
  readonly instrument?: string;
  readonly resolution?: string;
  readonly conditions?: string;
  readonly remark?: string;
  /** What its rule wanted typed in, and the edition in which it was read. */
  readonly variation?: string;
  readonly tareSample?: number;
  readonly plan?: string;
  readonly table?: 'Australia' | 'New Zealand';
  readonly edition?: string;
}

/**
 * The lots that count now.
 *
 * Method   as with trials: the last of a chain of corrections
 * Symbols  records  the set, whole by verifyRecords
 * Returns  lots in the order given
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const lotsOf = (records: readonly Envelope[]): readonly RecordedLot[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'lot' && version === 1)
    .map(({ id, deviceTime, body }) => ({
      ...(body as unknown as Omit<RecordedLot, 'id' | 'at'>),
      id,
      at: deviceTime,
    }));
