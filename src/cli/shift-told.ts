import type { ShiftAnswer, Shown } from '../floor/shift/index.ts';

/** The shift of one floor, and the same with the change that was asked for. */
export interface ShiftTold {
  readonly answer: ShiftAnswer;
  readonly changed?: ShiftAnswer;
  /** Good bottles a shift that the change gives. */
  readonly moved?: Shown;
}
