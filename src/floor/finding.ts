import type { Kind } from '../quantity/kinds.ts';
import type { Note, Values } from '../sheets/frame.ts';

/** A sheet with the numbers that were put through it. All values SI. */
export interface Working {
  readonly sheet: string;
  readonly version: number;
  readonly inputs: Values;
  readonly outputs: Values;
  readonly notes: readonly Note[];
  /**
   * Where an input came from: a place in the book, the output of another working of this floor, or a solution found by
   * iteration. Keys are input names; the members of a list stand each on its own, as `bore.0`, `bore.1`.
   */
  readonly from: Readonly<Record<string, Origin>>;
  /** What is left over where the answer was found by iteration. */
  readonly residual?: number;
}

export type Origin =
  | { readonly path: string; readonly assumed?: boolean }
  | { readonly working: number; readonly output: string }
  /** Found together with others by iteration; the working's residual says how well. */
  | { readonly solved: 'balance' | 'row' | 'hour' | 'loop' };

/** One number of one floor; absent `value` is unknown. */
export interface Figure {
  readonly id: string;
  readonly kind: Kind;
  readonly value?: number;
  /** 95 % interval, where any input carries a spread or a range. */
  readonly low?: number;
  readonly high?: number;
  /** Index into the floor's workings. */
  readonly working?: number;
  /** Which output of that working. */
  readonly output?: string;
  /** Where it stands in the book, for a figure that is said there and not computed. */
  readonly path?: string;
  /** Book paths that were absent and for which a default was taken. */
  readonly assumed: readonly string[];
  /** Book paths whose absence makes the figure unknown. */
  readonly missing: readonly string[];
}

export type Verdict = 'carries' | 'short' | 'unknown';

/** Demand against what the floor has. */
export interface Finding {
  readonly id: string;
  readonly verdict: Verdict;
  /** What is asked: the black tick. */
  readonly demand: Figure;
  /** What the floor has or makes: the bar. */
  readonly have: Figure;
  /** `least`: have must reach demand; `most`: have must stay under it. */
  readonly sense: 'least' | 'most';
  /** (have - demand) / demand, turned so that positive is good; absent where unknown. */
  readonly margin?: number;
  /** The book path whose answer would decide, for `unknown`. */
  readonly decides?: string;
  /**
   * The verdict rests on values that somebody said without saying how sure, each taken with a default width: it holds if
   * what they said holds.
   */
  readonly ifSaid: boolean;
  /** What makes the width of the answer, most first. */
  readonly causes: readonly {
    readonly path: string;
    /** Given with its width, stated without one, or assumed by the program. */
    readonly doubt: 'given' | 'stated' | 'assumed';
    /** Share of the width that would go if this value were sure, 0 to 1. */
    readonly share: number;
  }[];
  /** Levers that may carry it; solved by `remediesFor`. */
  readonly levers: readonly string[];
  readonly notes: readonly Note[];
}
