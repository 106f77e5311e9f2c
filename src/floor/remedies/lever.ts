import type { Book, Patch } from '../../book/index.ts';
import type { Kind } from '../../quantity/kinds.ts';
import type { FloorInputs } from '../read-floor.ts';
import type { FloorSolution } from '../solve-floor.ts';

/** One step of a lever: what would be written into the book, and how it reads. */
export interface Candidate {
  readonly patches: readonly Patch[];
  /** The changed value, SI. */
  readonly value: number;
  /** As it would stand in the book. */
  readonly text: string;
}

/** Something on a floor that can be changed, with its steps from the least change to the greatest. */
export interface Lever {
  readonly id: string;
  /** Book place that it turns, for its name on the screen; the first of several. */
  readonly path: string;
  readonly kind: Kind;
  /** How many steps there are; steps are made only when they are tried. */
  readonly steps: number;
  readonly candidate: (step: number) => Candidate;
}

/** What a lever may look at. */
export interface Situation {
  readonly book: Book;
  readonly floor: number;
  readonly floorPath: string;
  readonly inputs: FloorInputs;
  readonly solution: FloorSolution;
}

/** Gives the levers of one kind that this floor has; none where it has no such thing. */
export type LeverMaker = (situation: Situation) => readonly Lever[];
