import type { HoldRule } from '../hold-rule.ts';
import type { Draw } from './draw.ts';
import type { LineStop, StopCause } from './stop-cause.ts';

interface Station {
  readonly station: string;
  readonly stops?: readonly StopCause[];
}

export interface LoadStation extends Station {
  readonly by: 'operator' | 'automatic';
  /** s a bottle or a row */
  readonly seconds: Draw;
  readonly per: 'bottle' | 'row';
  /** Share of places that stay empty. */
  readonly missing: number;
  /** Bottles that stand loaded before the next station takes them; at least a row. Infinity: any number. */
  readonly room: number;
}

export interface WashZone {
  readonly zone: string;
  /** Rows that stand in it at once. */
  readonly rows: number;
  /** Share of the stand between two strokes in which a bottle is wetted. */
  readonly share: number;
  /** s of each stand in which it is not wetted, whatever its length */
  readonly dead: number;
  /** s of a stand after which the spray shuts; infinity where it does not */
  readonly timeOut: number;
  /** Immersed: the strokes count too. */
  readonly soaks: boolean;
  /** s of the whole stay for which an immersed bottle drains */
  readonly emptying: number;
}

export interface WasherStation extends Station {
  readonly row: number;
  /** Rows in the machine; a row comes out so many strokes after it went in. 0: it comes out at the stroke that takes it. */
  readonly rows: number;
  readonly stroke: number;
  readonly dwell: number;
  /** In flow order, from the first row on. */
  readonly zones: readonly WashZone[];
}

export interface DischargeStation extends Station {
  /** s a row */
  readonly seconds: number;
  /** Share of bottles that fall and are taken out. */
  readonly fallen: number;
}

export interface ConveyorStation extends Station {
  /** s from end to end */
  readonly seconds: number;
  /** False: it stands with what stands at its end, and what it carries keeps its distances. */
  readonly accumulates?: boolean;
  /** Bottles that have room on it; absent where nothing was said. Wanted beside one that does not accumulate. */
  readonly room?: number;
}

/** Seconds of the slowest lane by what is drawn from the tank and not made up; straight between the points. */
export interface FallingSupply {
  /** m3, rising from 0 */
  readonly drawn: readonly number[];
  /** s at these */
  readonly seconds: readonly number[];
  /** m3 a bottle, with what it overflows */
  readonly perBottle: number;
  /** m3/s */
  readonly makeUp: number;
  /** m3; infinity where nothing limits it */
  readonly usable: number;
}

export interface FillStation extends Station {
  readonly lanes: number;
  readonly travelIn: number;
  readonly lift: number;
  /** s while the liquid in the run gathers speed */
  readonly lag: number;
  /** s of the slowest lane of a set; with `supply`, what is added to its seconds */
  readonly filling: Draw;
  readonly supply?: FallingSupply;
  readonly drip: number;
  readonly lower: number;
  readonly clearOut: number;
}

export interface CapChute {
  /** Tag of the sorter. */
  readonly station: string;
  /** Caps below the low sensor, below the high sensor, and in the chute at the start. */
  readonly low: number;
  readonly high: number;
  readonly start: number;
  /** Caps a second of the sorter. */
  readonly rate: number;
  /** s from the low sensor's signal to the first cap */
  readonly runUp: number;
  readonly stops?: readonly StopCause[];
}

export interface ClosingStation extends Station {
  readonly heads: number;
  /** s a bottle and head */
  readonly perBottle: Draw;
  /** Bottles that have room before and under the heads; infinity where nothing was said. */
  readonly room: number;
  /** s from the fill station to the heads */
  readonly transit: number;
  /** Share of bottles that are rejected once closed. */
  readonly rejected: number;
  readonly chute?: CapChute;
}

export interface TakeOffStation extends Station {
  readonly by: 'operator' | 'automatic';
  /** s a bottle */
  readonly perBottle: Draw;
  /** Bottles that have room at the take-off; infinity where nothing was said. */
  readonly room: number;
  /** s from the heads to the take-off */
  readonly transit: number;
}

/**
 * A line for a shift, on one floor and for one format; plain seconds and bottles. Stations that are absent take no time;
 * without a load station the line is never short of bottles.
 */
export interface ShiftLine {
  /** s that are counted */
  readonly duration: number;
  /** s before counting starts */
  readonly warmUp: number;
  /** An empty line, or the washer full of bottles. */
  readonly start: 'empty' | 'washer full';
  readonly load?: LoadStation;
  readonly washer?: WasherStation;
  readonly discharge?: DischargeStation;
  /** Between washer and fill station, in flow order. */
  readonly conveyors: readonly ConveyorStation[];
  /** Bottles that have room between washer and fill station; infinity where nothing was said. */
  readonly wayRoom: number;
  readonly fill?: FillStation;
  readonly closing?: ClosingStation;
  readonly takeOff?: TakeOffStation;
  readonly holds: readonly HoldRule[];
  readonly lineStops: readonly LineStop[];
  /** Where the line's minutes are counted. Absent: washer, or the first that there is of fill, closing, take-off. */
  readonly core?: 'washer' | 'fill' | 'closing' | 'takeOff';
}
