import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** What a record says of one of the customer's bottles, as plain data; quantities as they were typed. */
export interface RecordedSample {
  /** Id of the record: a correction names it. */
  readonly id: string;
  readonly at?: string;
  readonly format: string;
  /** What is written on the bottle, so that it is found again. */
  readonly bottle: string;
  readonly by?: string;
  readonly mould?: string;
  readonly mass?: string;
  readonly brimfulMass?: string;
  readonly levelMass?: string;
  readonly temperature?: string;
  readonly height?: string;
  readonly bore?: string;
  readonly finish?: string;
  readonly body?: string;
  readonly lean?: string;
  readonly closureMass?: string;
  readonly closureHeight?: string;
  readonly instrument?: string;
  readonly resolution?: string;
  readonly remark?: string;
}

/**
 * The measured bottles that count now.
 *
 * Method   as with trials: the last of a chain of corrections
 * Symbols  records  the set, whole by verifyRecords
 * Returns  samples in the order given
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const samplesOf = (records: readonly Envelope[]): readonly RecordedSample[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'sample' && version === 1)
    .map(({ id, deviceTime, body }) => ({
      ...(body as unknown as Omit<RecordedSample, 'id' | 'at'>),
      id,
      at: deviceTime,
    }));
