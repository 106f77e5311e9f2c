import type { Kind } from '../quantity/kinds.ts';
import type { Note } from '../sheets/frame.ts';
import type { Figure, Finding, Verdict, Working } from './finding.ts';
import type { UtilityAssessment } from './utilities/utility-finding.ts';

export type { Figure, Finding, Origin, Verdict, Working } from './finding.ts';

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
  /** Air, power, water, heat, drains and building: what the line asks of each and what the floor has. */
  readonly utilities: UtilityAssessment;
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
  /** One of them that something looked at names; no utility is worked out for it that was not. */
  readonly workingAt: (working: number) => Working | undefined;
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
