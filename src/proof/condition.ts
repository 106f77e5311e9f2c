import type { Figure } from '../floor/assessment.ts';
import type { Limit } from './limit.ts';

/** What must be true for a result to count; one with a thing behind it bears its tag: `airPressure AIR-1`. */
export type ConditionSort =
  | 'manifoldPressure'
  | 'supplySteady'
  | 'product'
  | 'lineAtIndex'
  | 'frequency'
  | 'airPressure'
  | 'bathTemperature'
  | 'bottles'
  | 'caps'
  | 'photographed';

export type ConditionId = ConditionSort | `${ConditionSort} ${string}`;

/** How a condition is read: a quantity within limits, a word of the book, or yes and no. */
export type ConditionRead = 'quantity' | 'word' | 'claim';

/** Whether it can be so on this floor, by what the book says of it. */
export type Holds =
  | 'holds'
  | 'cannot'
  /** The book does not say enough. */
  | 'unknown'
  /** Only told on the day. */
  | 'asked';

export interface Condition {
  readonly id: ConditionId;
  readonly sort: ConditionSort;
  /** Tag of the thing that it is about. */
  readonly of?: string;
  readonly read: ConditionRead;
  readonly limits: readonly Limit[];
  /** The word that must be read. */
  readonly word?: string;
  readonly here: Holds;
  /** What this floor has of it. */
  readonly have?: Figure;
  readonly haveWord?: string;
  /** Share of the nearest bound by which this floor misses. */
  readonly by?: number;
  /** Places of the book that it hangs on. */
  readonly places: readonly string[];
}
