import type { Problem } from '../../quantity/problem.ts';

/** What had to be assumed of a trial, what is wanted of it, or why it is left out. */
export type TrialNoteCode =
  /** Weighed without its bottle: no volume. */
  | 'tareMissing'
  /** The mean of the other tares was taken. */
  | 'tareOfOthers'
  /** The liquid's temperature is that of the floor. */
  | 'temperatureAssumed'
  /** One in the last digit of the gross was taken for the division of the balance. */
  | 'divisionAssumed'
  /** Nobody says when the balance was held against weights: trusted to one division. */
  | 'calibrationAssumed'
  /** A level without a profile of the bottle: no volume. */
  | 'profileMissing'
  /** The density of the liquid is not known: no volume. */
  | 'densityMissing'
  /** Nobody looked whether it ran over, and it holds about what a bottle holds to its level. */
  | 'overflowNotSaid'
  /** Another product than the floor runs: its flows are others. */
  | 'otherProduct';

export interface TrialNote {
  readonly code: TrialNoteCode;
  /** Place of the trial among those that were given. */
  readonly trial: number;
}

/** A trial that can't be read, with everything that is wrong with it. */
export interface TrialRefused {
  readonly trial: number;
  readonly problems: readonly Problem[];
}
