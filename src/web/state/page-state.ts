import type { Book, Patch } from '../../book/index.ts';
import type { Assessment } from '../../floor/assessment.ts';
import type { Problem } from '../../quantity/problem.ts';

/** One step that a person made, with the way there and the way back. */
export interface Edit {
  readonly reason: string;
  readonly forward: readonly Patch[];
  readonly back: readonly Patch[];
}

/** A field in the middle of being written. `book` is the last book that its text made, if any did. */
export interface Typing {
  readonly path: string;
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly book?: Book;
}

/** A remedy laid over the book without being saved. */
export interface Trial {
  readonly floor: string;
  readonly finding: string;
  readonly lever: string;
  readonly label: string;
  readonly patch: readonly Patch[];
  readonly book: Book;
}

export type Saving =
  | { readonly kind: 'saved' }
  | { readonly kind: 'saving' }
  /** The server cannot be reached; what waits is kept by the browser. */
  | { readonly kind: 'waiting' }
  | { readonly kind: 'conflict'; readonly newest: number }
  | { readonly kind: 'refused'; readonly message: string };

/** What the right panel shows: a figure or finding of a floor, or one of its workings. */
export interface Opened {
  readonly floor: string;
  readonly id?: string;
  readonly working?: number;
  /** Opened by the page, not by a person: the focus stays where it is. */
  readonly unasked?: boolean;
}

export type UnitChoice = 'book' | 'metric' | 'us';

export interface PageState {
  readonly load: 'loading' | 'ready' | 'absent' | 'unreachable' | 'unreadable';
  readonly problems: readonly Problem[];
  readonly id: string;
  /** Number of the newest revision that this page knows. */
  readonly revision: number;
  /** The book with every kept edit, saved or not. */
  readonly book?: Book;
  /** Edits that no revision holds yet, oldest first. */
  readonly waiting: readonly Edit[];
  readonly undone: readonly Edit[];
  readonly done: readonly Edit[];
  readonly typing?: Typing;
  readonly trial?: Trial;
  readonly saving: Saving;
  /** Reasons of edits that could not be laid over a newer revision, because their thing is gone. */
  readonly lost?: readonly string[];
  /** What the page shows: the typed text or the trial laid over the book. */
  readonly shown?: Book;
  readonly assessment?: Assessment;
  /** Places of what is shown that are not as the book says them: they were read, or stand in for the visit. */
  readonly laid?: readonly string[];
  readonly facing: readonly [string | undefined, string | undefined];
  readonly opened?: Opened;
  readonly trail: readonly Opened[];
  readonly units: UnitChoice;
}

export const emptyPage: PageState = {
  load: 'loading',
  problems: [],
  id: '',
  revision: 0,
  waiting: [],
  undone: [],
  done: [],
  saving: { kind: 'saved' },
  facing: [undefined, undefined],
  trail: [],
  units: 'book',
};
