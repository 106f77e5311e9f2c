import type { Patch } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';

/** Something to be said of an answer that was taken. */
export type AnswerNote = 'labelChanged' | 'notAsked' | 'whoNotKept';

/** What every row of the report carries beside its own. */
export interface Reported {
  /** As the spreadsheet numbers it. */
  readonly row: number;
  readonly path?: string;
  readonly by?: string;
  readonly on?: string;
  readonly remark?: string;
}

export interface TakenAnswer extends Reported {
  readonly path: string;
  /** As it will stand in the book. */
  readonly value: string;
  /** What stands there now, where something does. */
  readonly before?: unknown;
  readonly notes: readonly AnswerNote[];
}

export interface AnswerNotUnderstood extends Reported {
  /** What was written, the answer with its unit. */
  readonly given: string;
  readonly problems: readonly Problem[];
}

export interface EmptyAnswer extends Reported {
  /** What was written instead of an answer, such as `unknown`. */
  readonly given?: string;
}

/** Row by row what a sheet that came back holds. Every row below the headings stands in one of the three lists. */
export interface AnswersRead {
  readonly taken: readonly TakenAnswer[];
  readonly notUnderstood: readonly AnswerNotUnderstood[];
  readonly empty: readonly EmptyAnswer[];
  /** Places that are asked and have no row any more. */
  readonly missing: readonly string[];
  /** All that was taken, as one change that the book accepts. */
  readonly patch: readonly Patch[];
}
