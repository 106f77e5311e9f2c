import { checkSorts } from '../book/schema/check-sorts.ts';
import type { Verdict } from '../floor/assessment.ts';
import type { ConditionId } from './condition.ts';
import type { Limit } from './limit.ts';
import type { Stage } from './stage.ts';

export { checkSorts };

export type CheckSort = (typeof checkSorts)[number];

/** Instruments by what they are, where the book names none of its own. */
export type InstrumentSort =
  | 'stopwatch'
  | 'gauge'
  | 'thermometer'
  | 'multimeter'
  | 'clampMeter'
  | 'lowOhmMeter'
  | 'insulationMeter'
  | 'phaseMeter'
  | 'stopTimeMeter'
  | 'titration'
  | 'phMeter'
  | 'flowMeter'
  | 'hardnessTest'
  | 'scale'
  | 'torqueMeter'
  | 'soundLevelMeter';

/** How the readings of a check are held against its limits. */
export type Judged =
  /** Each reading by itself. */
  | 'each'
  /** The mean with the interval that holds it, by Student. */
  | 'mean'
  /** The stop time that distances are worked out with: the highest, or three standard deviations over the mean. */
  | 'stop time';

/** One thing to prove. */
export interface Check {
  /** Stable: made of its sort and tags, or the tag that the book gives it. */
  readonly id: string;
  readonly sort: CheckSort;
  /** What a `utility` check asks: the question of the finding. */
  readonly question?: string;
  /** Tags that it is on; the first is what it is about, of an effect the cause. */
  readonly on: readonly string[];
  readonly stage: Stage;
  /** Hold: nothing that comes after goes on without release. Witness: the other side is asked to be there. */
  readonly point: 'none' | 'witness' | 'hold';
  readonly instrument?: InstrumentSort;
  /** Tag of an instrument of the book. */
  readonly ownInstrument?: string;
  /** How many readings, or how many times it is tried. */
  readonly readings: number;
  readonly judged: Judged;
  readonly limits: readonly Limit[];
  /** What must be seen, as parts of the sentence of its sort; from the book. */
  readonly parts: Readonly<Record<string, string | number>>;
  readonly conditions: readonly ConditionId[];
  /** Places of the book that it hangs on; a change at one of them makes its result stale. */
  readonly places: readonly string[];
  /** Places that must say more before it can be judged. */
  readonly missing: readonly string[];
  /** Ids of the checks that come before, beside the stages. */
  readonly after: readonly string[];
  /** What the figures of this floor foretell of its readings. */
  readonly foreseen?: Verdict;
  /** Who brings a result that comes days later, and what may not start before. */
  readonly late?: { readonly who: 'laboratory' | 'supplier'; readonly before: Stage };
  /** Whether a proof holds on the next floor, where nothing of it was parted and no supply of the floor is in it. */
  readonly travels: boolean;
  /** A reading beyond the limit is a failure whatever the conditions were. */
  readonly missFails: boolean;
  /** Conditions that the book adds, in its words. */
  readonly ownConditions: readonly string[];
  /** Limit that the book adds, in its words. */
  readonly ownLimit?: string;
  /** Name that the book gives it. */
  readonly name?: string;
  readonly note?: string;
  /** Seconds. */
  readonly duration?: number;
}
