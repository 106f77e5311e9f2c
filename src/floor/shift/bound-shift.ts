import type { ShiftLine } from '../../line/shift/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import type { Hold } from '../assessment.ts';
import type { StopLog } from './logged-stops.ts';
import type { FillFromTrials } from './trial-fill.ts';

/** The loop that decides next, were the critical one out of the way. */
export interface NextLoop {
  readonly steps: readonly { readonly step: string; readonly station: string; readonly seconds: number }[];
  /** s of a set of the lanes */
  readonly period: number;
  /** s by which it is shorter than the critical one */
  readonly shorter: number;
}

/** What a shorter step is worth while nothing stops, from the exact cycle. */
export interface StepWorth {
  readonly step: 'fill' | 'dwell' | 'cap';
  /** s of the step as it is */
  readonly seconds: number;
  /** Bottles a second that the first second gives, or all that there is of it. */
  readonly gain: number;
  /** s of that gain: a second, or less where another loop takes over sooner. */
  readonly over: number;
  /** s of the step at which another loop decides and it is worth nothing like as much. */
  readonly until: number;
}

/** One floor of a book as a line for a shift: plain data, so that a worker can be sent it. */
export interface BoundShift {
  readonly floor: string;
  readonly name: string;
  readonly role: 'built on' | 'bound for' | 'other';
  readonly format: string;
  /** s */
  readonly duration: number;
  /** Absent where something is missing or the line can't run. */
  readonly line?: ShiftLine;
  /** Bottles a second with constant times, a full tank and no stop. */
  readonly runningRate?: number;
  /** s of a set with these */
  readonly period?: number;
  /** What the critical loop spans: blocks, and bottles and fills of a block. */
  readonly loop?: { readonly blocks: number; readonly bottles: number; readonly fills: number };
  /** Bottles a second, and the share of the run. */
  readonly agreedRate?: number;
  readonly agreedEfficiency?: number;
  /** s */
  readonly agreedRun: number;
  readonly confidence: number;
  /** How the stops are known; absent where some station says nothing of its stops. */
  readonly stops?: 'declared' | 'logged' | 'partly' | 'none';
  /** What runs say of the stops, where some were logged. */
  readonly log?: StopLog;
  /** What trials say of the fill, where some do. */
  readonly fillFrom?: FillFromTrials;
  /** s by which the fill may be shorter or longer than taken, from what the book, or trials, are not sure of. */
  readonly fillEnds?: readonly [number, number];
  /** Places of the book that bottles a shift want, and those for which something was taken. */
  readonly missing: readonly string[];
  readonly assumed: readonly string[];
  /** Tags of hold rules that are not followed, and of those that a shift follows and the running rate does not know. */
  readonly unfollowed: readonly string[];
  readonly notInRate: readonly string[];
  /** Why the line can't run, all at once. */
  readonly problems: readonly Problem[];
  readonly hold?: Hold;
  readonly next?: NextLoop;
  /** s of a set that conveyors cost which stand with what stands at their ends. */
  readonly byBelts?: number;
  readonly worth: readonly StepWorth[];
}
