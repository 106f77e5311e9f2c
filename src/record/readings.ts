import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** What a record says was read, as plain data. */
export interface RecordedReading {
  /** Id of the record: a correction names it. */
  readonly id: string;
  readonly floor: string;
  /** Place within the floor: `air/compressor/cutIn`. */
  readonly of: string;
  readonly value: string;
  readonly spread?: string;
  readonly by: string;
  /** The record's own time. */
  readonly at: string;
  readonly instrument?: string;
  readonly users?: number;
  readonly conditions?: string;
  readonly remark?: string;
}

type Body = Omit<RecordedReading, 'id' | 'at'>;

/** Version 1 named the place from the top of the book; the floor is named by its tag all the same. */
const withinFloor = (of: string): string => of.replace(/^\/?floors\/\d+\//, '').replace(/^\/+/, '');

/**
 * The readings that count now.
 *
 * Method   the records that no other replaces: of a reading and its corrections the last, and none where a note took
 *          it back
 * Symbols  records  the set, whole by verifyRecords
 * Returns  readings in the order given; of two corrections of one reading, written apart, both
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const readingsOf = (records: readonly Envelope[]): readonly RecordedReading[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'reading' && (version === 1 || version === 2))
    .map((record) => {
      const body = record.body as Body;
      return { ...body, id: record.id, at: record.deviceTime, of: withinFloor(body.of) };
    });
