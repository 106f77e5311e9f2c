/** Where the sums of a walk stand in a list of numbers. */
export const sumOf = {
  /** s of work of each station since the shift began, as `StationClocks.worked` counts it. */
  loadWorked: 0,
  washWorked: 1,
  setUpWorked: 2,
  fillWorked: 3,
  capWorked: 4,
  takeWorked: 5,
  /** Bottles of one place times s that stood before a station. */
  beforeWasher: 6,
  beforeFill: 7,
  beforeHeads: 8,
  beforeTakeOff: 9,
  /** s of the fills, and s that a station was blocked or starved. */
  filling: 10,
  washStarved: 11,
  washBlocked: 12,
  fillBlocked: 13,
  headsBlocked: 14,
  /** s for which a set still travelled that nothing struck and that held the washer. */
  heldTravel: 15,
} as const;

export const sumWidth = 16;
