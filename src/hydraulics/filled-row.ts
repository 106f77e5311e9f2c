import type { Stored } from './stored.ts';

export interface LaneFill {
  readonly lane: string;
  /** From the moment all lanes flow to this lane's count, s. */
  readonly countTime: number;
  /** To fully closed: count, delay and closing, s. */
  readonly fillTime: number;
  /** Mean volume in the bottle and over its brim, m3. */
  readonly volume: number;
  /** What passed after the count, without the drip, m3. */
  readonly afterRun: number;
  /** m3/s when the count was reached. */
  readonly flowAtEnd: number;
  /** Highest flow of the lane while its jet was free, m3/s. */
  readonly flowFree: number;
  /** Highest flow of the lane while its nozzle was covered, m3/s. */
  readonly flowCovered: number;
}

export interface RowFill {
  readonly lanes: readonly LaneFill[];
  /** Longest lane, s. */
  readonly fillTime: number;
  /** When the last lane reached its count, s: `stored` is of that moment. */
  readonly drawTime: number;
  /** Everything that left the source, m3. */
  readonly drawn: number;
  readonly stored: Stored;
  /** What each lane had passed when something changed, from the start to the last count. */
  readonly moments: readonly { readonly time: number; readonly volumes: readonly number[] }[];
  /** First moment at which the tank gave no more than its make-up, s; absent where it never did. */
  readonly ranDry?: number;
}

/** A row that can't be filled: nothing flows and nothing will change that. */
export interface StuckRow {
  readonly stuck: true;
  /** Lanes still open. */
  readonly lanes: readonly string[];
}
