import { currentRecords } from './current-records.ts';
import type { Envelope } from './envelope.ts';

/** What a record says of how a value of all lanes moved between two floors, as plain data. */
export interface RecordedAllowance {
  /** Id of the record: a correction names it. */
  readonly id: string;
  readonly at?: string;
  readonly from: string;
  readonly floor: string;
  readonly of: 'meter-flow' | 'meter-viscosity' | 'valve-air' | 'kv-product' | 'run-column';
  /** A share with its spread, as it was typed: `3 % ± 1 %`. */
  readonly value: string;
  readonly by?: string;
  readonly how?: string;
  readonly remark?: string;
}

/**
 * The measured allowances that count now.
 *
 * Method   as with trials: the last of a chain of corrections, and none where a note took it back
 * Symbols  records  the set, whole by verifyRecords
 * Returns  allowances in the order given; of one line written twice apart from each other, both
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n)
 */
export const allowancesOf = (records: readonly Envelope[]): readonly RecordedAllowance[] =>
  currentRecords(records)
    .current.filter(({ kind, version }) => kind === 'allowance' && version === 1)
    .map(({ id, deviceTime, body }) => ({
      ...(body as unknown as Omit<RecordedAllowance, 'id' | 'at'>),
      id,
      at: deviceTime,
    }));
