import type { Owner } from './stop-cause.ts';

/** Mean over the shifts and spread from shift to shift; `spread` is 0 for a single one. */
export interface Figure {
  readonly mean: number;
  readonly spread: number;
}

/** What a station does at a moment. `idle` is a sorter whose chute is full. */
export type StationState = 'running' | 'starved' | 'blocked' | 'held' | 'caps' | 'stopped' | 'idle';

/** Seconds of a station in each state; they add up to the shift. */
export interface StationMinutes {
  readonly station: string;
  readonly states: Readonly<Record<StationState, Figure>>;
  /** Mean bottles that stand before it. */
  readonly waiting: Figure;
}

export interface CauseFigures {
  readonly cause: string;
  /** Where it strikes; several for a stop of the line. */
  readonly stations: readonly string[];
  readonly owner: Owner;
  readonly strikes: Figure;
  /** s that its first station stood for it */
  readonly stood: Figure;
  /** s that it cost at the core of the line: the rest was taken up by room and slack */
  readonly lost: Figure;
}

/** What the core of the line waited for, in the words of the event graph. */
export type LostStep =
  | 'load'
  | 'stroke'
  | 'dwell'
  | 'setUp'
  | 'convey'
  | 'travelIn'
  | 'fill'
  | 'lower'
  | 'clearOut'
  | 'cap'
  | 'sorter'
  | 'takeOff'
  /** Before the first bottles came. */
  | 'start';

/** Seconds of the core of the line; all of them add up to the shift. */
export interface LostTime {
  /** The core's own state: it runs, is stopped, or waits. */
  readonly state: StationState;
  /** Station that was waited for; the core itself where it runs or is stopped. */
  readonly station: string;
  /** Work that was waited for, or the cause that stopped that work. */
  readonly step?: LostStep;
  readonly cause?: string;
  /** Of the cause, or of the one who does the work. */
  readonly owner: Owner;
  readonly seconds: Figure;
}

/** Seconds of contact in a wash zone over all bottles of all shifts. */
export interface ContactFigures {
  readonly zone: string;
  readonly rows: number;
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

export interface ShiftFigures {
  readonly shifts: number;
  /** Bottles taken off, closed and not rejected. */
  readonly good: Figure;
  /** How many shifts gave so many good bottles, rising. */
  readonly goodCounts: readonly { readonly good: number; readonly shifts: number }[];
  readonly put: Figure;
  readonly fallen: Figure;
  readonly rejected: Figure;
  /** In the line when the shift ended, less those at its start. */
  readonly gained: number;
  readonly core: string;
  readonly minutes: readonly LostTime[];
  readonly stations: readonly StationMinutes[];
  readonly causes: readonly CauseFigures[];
  readonly contacts: readonly ContactFigures[];
  /** Most that was drawn from the tank and not made up, m3; 0 where nothing falls. */
  readonly drawnMost: Figure;
  /** Shifts in which the tank could not give a fill: their share; when, s counted, and the good bottles before; means. */
  readonly ranDry?: { readonly share: number; readonly at: number; readonly bottles: number };
}

/** Difference of two lines by common chances, second less first. */
export interface ShiftChange {
  readonly shifts: number;
  readonly good: Figure;
  readonly before: Figure;
  readonly after: Figure;
}

/** A mean with its interval. */
export interface Bounds {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}
