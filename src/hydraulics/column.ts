/** A lane to the column: its openings, and what it counts to. */
export interface ColumnLane {
  /** m3/s per sqrt(Pa) */
  readonly open: number;
  readonly slow: number;
  /** Volume at which it slows down, m3; never where it has one speed. */
  readonly changeOver: number;
  /** m3 */
  readonly count: number;
  /** From the count until the valve moves, s. */
  readonly delay: number;
  /** Of the stroke, both ways, s. */
  readonly closing: number;
}

/** Supply, run and lanes of a row, the loss of supply and run taken as going with the square of the flow. */
export interface Column {
  /** What drives the jets at no flow, Pa. */
  readonly push: number;
  /** Pa s2/m6 */
  readonly resistance: number;
  /** sum(rho L/A), Pa s2/m3 */
  readonly mass: number;
  readonly lanes: readonly ColumnLane[];
}

/** Volumes without the drip, m3, and times from the word to open to fully shut, s; by lane. */
export interface ColumnRow {
  readonly volumes: readonly number[];
  readonly times: readonly number[];
}

/** Of a count: what is left where a lane reaches it in the moment in which another does. */
export const together = 1e-9;
