/** What a rule may hold, and what may hold it: what holds lies behind what is held. */
export type HeldStation = 'washer' | 'fill' | 'closing';
export type HoldingStation = 'fill' | 'closing' | 'takeOff';

/**
 * A station that may not begin with bottles while one behind it is in a state. What frees it:
 * `release`   the other has let go of all bottles that came to it, `fill end` it has filled them;
 * `room`      a place before the other is free, where all were taken;
 * `way out`   the other is rid of what it was done with;
 * `running`   the other is cleared of what stopped it
 */
export interface HoldRule {
  readonly rule: string;
  /** Absent: the washer. */
  readonly holds?: HeldStation;
  /** Absent: the fill station. */
  readonly by?: HoldingStation;
  readonly until: 'fill end' | 'release' | 'room' | 'way out' | 'running';
}

/** Whether a rule waits for bottles that came before to be past a station: only such have a part in an exact period. */
export const waitsForBottles = ({ until }: HoldRule): boolean => until === 'fill end' || until === 'release';
