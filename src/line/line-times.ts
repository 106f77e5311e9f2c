import type { HoldRule } from './hold-rule.ts';

/** A piece of the way from the washer to the fill station. */
export interface WayPiece {
  readonly station: string;
  readonly step: string;
  readonly seconds: number;
  /** False: it stands with what stands at its end. */
  readonly accumulates?: boolean;
  /** Bottles that have room on it; absent where nothing was said. */
  readonly room?: number;
}

/** What the line's stations take, on one floor and for one format; plain seconds and bottles. */
export interface LineTimes {
  readonly washer?: {
    readonly station: string;
    /** Bottles in a row. */
    readonly row: number;
    /** s */
    readonly stroke: number;
    /** s */
    readonly dwell: number;
  };
  /** What lies between washer and fill station, in flow order. */
  readonly way: readonly WayPiece[];
  /** Bottles that have room on the way; infinity where nothing was said. */
  readonly wayRoom: number;
  readonly fill?: {
    readonly station: string;
    readonly lanes: number;
    readonly travelIn: number;
    readonly lift: number;
    /** Time lost while the liquid in the run is set moving, s. */
    readonly lag: number;
    /** Slowest lane, s. */
    readonly filling: number;
    readonly drip: number;
    readonly lower: number;
    readonly clearOut: number;
  };
  readonly closing?: {
    readonly station: string;
    readonly heads: number;
    /** s a bottle and head */
    readonly perBottle: number;
    /** Bottles that may stand before the heads; infinity where nothing was said. */
    readonly room: number;
  };
  readonly takeOff?: {
    readonly station: string;
    /** Bottles a second. */
    readonly rate: number;
    readonly room: number;
  };
  readonly holds: readonly HoldRule[];
}
