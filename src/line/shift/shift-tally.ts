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
  /** How many shifts gave 0, 1, 2 … good bottles. */
  readonly goods: readonly number[];
  /** By zone: bottles, least, sum and most of their seconds of contact. */
  readonly contacts: readonly number[];
}

/** Sums over pairs of shifts of two lines that share their chances. */
export interface ChangeTally {
  readonly shifts: number;
  /** Good bottles before, after, and their difference. */
  readonly means: readonly number[];
  readonly squares: readonly number[];
}
