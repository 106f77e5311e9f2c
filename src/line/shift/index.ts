import type { Problem } from '../../quantity/problem.ts';
import type { LineTimes } from '../line-times.ts';
import type { ShiftLine } from './shift-line.ts';
import type { LineMoment, StationMoment } from './shift-moment.ts';
import type { Bounds, Figure, ShiftChange, ShiftFigures } from './shift-result.ts';

export type { Draw } from './draw.ts';
export type * from './shift-line.ts';
export type { BottleGroup, LineMoment, StationMoment } from './shift-moment.ts';
export type * from './shift-result.ts';
export type { LineStop, Owner, StopCause, StopPattern } from './stop-cause.ts';

/** Shifts `first` to `first + shifts - 1` of a seed: any parting of them into runs gives the same shifts. */
export interface ShiftPlan {
  readonly seed: number;
  readonly first: number;
  readonly shifts: number;
}

/** Sums over shifts, of one size whatever their number; plain data that a worker can send. */
export interface ShiftTally {
  readonly shifts: number;
  /** Means and sums of squares from them, by figure. */
  readonly means: readonly number[];
  readonly squares: readonly number[];
  /** Shifts by their good bottles. */
  readonly goods: readonly number[];
  readonly contacts: readonly number[];
}

/** Sums over pairs of shifts of two lines that share their chances. */
export interface ChangeTally {
  readonly shifts: number;
  readonly means: readonly number[];
  readonly squares: readonly number[];
}

/** One shift with all its moments. */
export interface ShiftTrace {
  readonly line: ShiftLine;
}

/** What is wrong with a line before it is run; paths are fields of the line such as `/closing/chute/low`. */
export declare const checkShift: (line: ShiftLine) => readonly Problem[];

/** Runs shifts of a line that `checkShift` finds nothing wrong with. */
export declare const runShifts: (line: ShiftLine, plan: ShiftPlan) => ShiftTally;
/** In the order of their shifts, so that every parting gives the same sums. */
export declare const mergeTallies: (tallies: readonly ShiftTally[]) => ShiftTally;
export declare const shiftFigures: (line: ShiftLine, tally: ShiftTally) => ShiftFigures;

export declare const runChange: (before: ShiftLine, after: ShiftLine, plan: ShiftPlan) => ChangeTally;
export declare const mergeChanges: (tallies: readonly ChangeTally[]) => ChangeTally;
export declare const shiftChange: (tally: ChangeTally) => ShiftChange;

/** Interval of a mean over shifts by Student's distribution. */
export declare const boundsOf: (figure: Figure, shifts: number, confidence: number) => Bounds;
/** Shifts that narrow the interval of a mean to a share of it. */
export declare const shiftsWanted: (
  figure: Figure,
  shifts: number,
  relative: number,
  confidence: number,
) => number | undefined;

export declare const traceShift: (line: ShiftLine, seed: number, shift: number) => ShiftTrace;
export declare const lineAt: (trace: ShiftTrace, at: number) => LineMoment;
/** Next wait or stop of any station that begins after a moment and lasts longer than `longerThan`. */
export declare const nextWait: (
  trace: ShiftTrace,
  after: number,
  longerThan?: number,
) => StationMoment | undefined;

/** The line with its mean times and no chance in it, for the exact period. */
export declare const meanTimes: (line: ShiftLine) => LineTimes;

/** A time of the line that a person might change. */
export type WorthOf = 'fill' | 'dwell' | 'stroke' | 'cap' | 'clearOut';

/** What less of a time is worth by the exact period. */
export interface TimeWorth {
  readonly of: WorthOf;
  /** s now */
  readonly now: number;
  /** Bottles a second gained for each second less. */
  readonly worth: number;
  /** s at which another loop becomes the longest and it is worth less; absent where that never comes. */
  readonly until?: number;
  /** Bottles a second there. */
  readonly rateThere: number;
}
export declare const timeWorth: (times: LineTimes, of: WorthOf) => TimeWorth | undefined;
