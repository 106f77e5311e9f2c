import type { LostStep, StationState } from './shift-result.ts';

/** Bottles that move or stand together. */
export interface BottleGroup {
  /** A row of the washer until it reaches the fill station, a set of the lanes from there on. */
  readonly kind: 'row' | 'set';
  /** From 0, in the order in which they come. */
  readonly number: number;
  readonly bottles: number;
  /** Tag of the station in which, or before which, they are. */
  readonly station: string;
  /** What is done to them; absent where they stand and wait. */
  readonly step?: LostStep;
  /** Share of that step that is over. */
  readonly progress: number;
  /** Place in the washer, 0 first. */
  readonly place?: number;
}

export interface StationMoment {
  readonly station: string;
  readonly state: StationState;
  /** What it does while it runs. */
  readonly step?: LostStep;
  /** Station, hold rule or cause that it waits for. */
  readonly waitsFor?: string;
  /** s from the start, when this state began and ends */
  readonly since: number;
  readonly until: number;
}

/** The cap chute at one moment. */
export interface ChuteMoment {
  /** Tag of the sorter. */
  readonly sorter: string;
  /** Caps in the chute; one on its way in counts in part. */
  readonly caps: number;
  /** Caps below the low and below the high sensor. */
  readonly low: number;
  readonly high: number;
  /** The sorter fills, rests above its low sensor, or is stopped. */
  readonly does: 'running' | 'idle' | 'stopped';
}

/** The line at one moment of a shift. */
export interface LineMoment {
  readonly at: number;
  readonly groups: readonly BottleGroup[];
  readonly stations: readonly StationMoment[];
  /** Absent where no chute feeds the heads. */
  readonly chute?: ChuteMoment;
  /** Bottles put on, taken off good, lost so far. */
  readonly put: number;
  readonly good: number;
  readonly lost: number;
}
