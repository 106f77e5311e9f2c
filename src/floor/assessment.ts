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

/** One lane in one row of bottles on this floor. */
export interface LaneFigures {
  readonly lane: string;
  readonly preset: number;
  readonly presetFrom: 'book' | 'worked out';
  /** Smallest whole count that reaches the level here. */
  readonly presetForLevel?: number;
  readonly flowAllOpen: number;
  readonly flowAtEnd: number;
  /** From all lanes open to this lane's count, steady. */
  readonly countTime: number;
  /** To fully closed: count time, delay and closing, without the lag of the run. */
  readonly fillTime: number;
  readonly volume: number;
  readonly afterRun: number;
  readonly overflow: number;
  /** Level volume minus volume, where the lane stays short. */
  readonly shortBy: number;
  readonly nozzleVelocity?: number;
  /** Workings of its flow with all lanes open, its fill and its dose. */
  readonly workings: { readonly flow?: number; readonly fill?: number; readonly dose?: number };
}

/** One stretch of the cycle chart. */
export interface CycleBar {
  /** Station tag. */
  readonly station: string;
  readonly state: 'works' | 'waits';
  /** The step that it does; for a wait the step, the hold rule's tag or the kind of room that it waits for. */
  readonly what: string;
  /** Station whose step ends the wait. */
  readonly waitsFor?: string;
  readonly from: number;
  readonly to: number;
}

export interface Hold {
  /** Event ids of the critical chain, in order, with the seconds of each step. */
  readonly chain: readonly {
    readonly step: string;
    readonly station: string;
    readonly seconds: number;
    /** The slowest lane, for the step `fill`. */
    readonly lane?: string;
    /** Tag of the hold rule, or the kind of room, through which the chain comes back. */
    readonly because?: string;
  }[];
  /** Station tag of what sets the pace. */
  readonly station: string;
  /** Which machine: `washer`, `fill`, `closing`, `take-off`, `supply`. */
  readonly by: string;
  /** Cycle minus the cycle that the washer alone would make; 0 when the washer sets the pace. */
  readonly waits: number;
}

export interface OperatingPoint {
  readonly lanesOpen: number;
  readonly flow: number;
  readonly pressure: number;
}

export interface FloorAssessment {
  readonly floor: string;
  readonly name: string;
  readonly role: 'built on' | 'bound for' | 'other';
  readonly format: string;
  readonly liquid?: string;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly findings: readonly Finding[];
  readonly lanes: readonly LaneFigures[];
  readonly hold?: Hold;
  readonly cycle: readonly CycleBar[];
  readonly curve: {
    /** Supply at the manifold: pressure left there against flow. */
    readonly supply: readonly { readonly flow: number; readonly pressure: number }[];
    readonly points: readonly OperatingPoint[];
  };
  /** Tank over the agreed hour: time, surface level or share of volume left. */
  readonly tank: readonly { readonly time: number; readonly level: number }[];
  readonly workings: readonly Working[];
  readonly notes: readonly Note[];
}

export interface Assessment {
  readonly format: string;
  readonly floors: readonly FloorAssessment[];
}

/** One step of a remedy as it would be written into the book. */
export interface RemedyChange {
  readonly lever: string;
  /** The place in the book that the lever turns; the first of several. */
  readonly path: string;
  /** The changed value, SI, and as it would stand in the book. */
  readonly kind: Kind;
  readonly value: number;
  readonly text: string;
}

/** What a remedy does to a finding that it was not meant for. */
export interface RemedyHarm {
  readonly floor: string;
  readonly finding: string;
  readonly verdict: Verdict;
  readonly margin?: number;
}

/** The least change that carries a finding, or that none does. */
export interface Remedy {
  readonly lever: string;
  /** The place in the book that the lever turns; the first of several. */
  readonly path: string;
  readonly finding: string;
  readonly floor: string;
  /** Patches of the book, path and what to put there; empty where no step carries. */
  readonly patch: readonly { readonly path: string; readonly value: unknown }[];
  /** What is changed, one entry a lever; two where no lever carries alone; empty where none carries. */
  readonly changes: readonly RemedyChange[];
  /** What the next smaller step still gives, and by how much it misses. */
  readonly nextSmaller?: { readonly text: string; readonly margin?: number };
  readonly margin?: number;
  /** Findings that carried and no longer would, on any floor: it carries this and breaks these. */
  readonly breaks: readonly RemedyHarm[];
}
