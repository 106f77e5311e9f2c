import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import type { Basis } from './book-places.ts';
import type { ConditionReading } from './results.ts';

/** A run as a record holds it, in either version. */
export interface RecordedRun {
  readonly floor: string;
  readonly from: string;
  readonly to: string;
  /** That came out, those that were rejected counted in. */
  readonly bottles: number;
  readonly by: string;
  readonly format?: string;
  readonly rejected?: number;
  readonly broken?: number;
  readonly takenOut?: number;
  readonly bottlesIn?: number;
  readonly quarantined?: number;
  readonly stops?: readonly { readonly from: string; readonly to: string; readonly external?: boolean }[];
  readonly basis?: readonly Basis[];
  readonly conditions?: string | readonly ConditionReading[];
  readonly witness?: string;
  readonly evidence?: readonly string[];
  readonly remark?: string;
}

/** The runs that count now; a version of the future is passed over. */
export const runsOf = (records: readonly Envelope[]): readonly Envelope<RecordedRun>[] =>
  currentRecords(records).current.filter(
    ({ kind, version }) => kind === 'run' && version <= 2,
  ) as readonly Envelope<RecordedRun>[];

/** s between two moments; 0 where they are none or stand the wrong way round. */
export const secondsBetween = (from: string, to: string): number => {
  const seconds = (Date.parse(to) - Date.parse(from)) / 1000;
  return Number.isFinite(seconds) ? Math.max(0, seconds) : 0;
};
