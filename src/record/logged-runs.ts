import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** What a record says of a run, as far as its stops go, as plain data. */
export interface RecordedLog {
  /** Id of the record. */
  readonly id: string;
  readonly floor: string;
  readonly from: string;
  readonly to: string;
  readonly bottles: number;
  readonly format?: string;
  /** Absent where nobody wrote down whether anything stood. */
  readonly stops?: readonly { readonly from: string; readonly to: string; readonly cause: string }[];
}

/**
 * The runs that count now, in either version.
 *
 * Symbols  records  the set, whole by verifyRecords
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const loggedRunsOf = (records: readonly Envelope[]): readonly RecordedLog[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'run' && version <= 2)
    .map(({ id, body }) => {
      const { floor, from, to, bottles, format, stops } = body as unknown as Omit<RecordedLog, 'id'>;
      return {
        id,
        floor,
        from,
        to,
        bottles,
        ...(format === undefined ? {} : { format }),
        ...(stops === undefined ? {} : { stops }),
      };
    });
