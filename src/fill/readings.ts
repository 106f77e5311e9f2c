import type { RowSetup } from './row-model.ts';

/** A reading of one trial. */
export interface Reading {
  readonly trial: number;
  readonly value: number;
  /** Square of its standard uncertainty. */
  readonly stated: number;
  /** Standard uncertainty of what it shares with all others of its kind, signed as they are: none of `stated`. */
  readonly common?: number;
}

/** What was read of one set-up, by lane of its row. */
export interface SetupReadings {
  readonly setup: RowSetup;
  readonly volumes: readonly (readonly Reading[])[];
  /** Volumes that the bottle got at least. */
  readonly bounds: readonly (readonly Reading[])[];
  readonly times: readonly (readonly Reading[])[];
  readonly pressures: readonly Reading[];
}
