import type { Book } from '../../book/index.ts';
import type { Remedy } from '../../floor/assessment.ts';
import type { BookComparison } from '../../floor/index.ts';
import type { Client } from '../../server/client.ts';
import type { Words } from '../words/words.ts';
import type { Keep } from './kept-edits.ts';
import type { KeptNotes } from './kept-notes.ts';
import type { Observed } from './observed.ts';
import type { PageState } from './page-state.ts';

export interface RemedyQuestion {
  readonly book: Book;
  readonly floor: string;
  readonly finding: string;
}

/** How far a search has come. */
export interface RemedySearch {
  readonly found: readonly Remedy[];
  readonly done: boolean;
}

/** Solves remedies away from the page and tells each as it is found; gives back how to give the search up. */
export type SolveRemedies = (
  question: RemedyQuestion,
  answer: (search: RemedySearch | 'failed') => void,
) => () => void;

/** Compares two books away from the page; gives back how to give it up. */
export type CompareBooks = (
  books: { readonly from: Book; readonly to: Book },
  answer: (comparison: BookComparison | 'failed') => void,
) => () => void;

/** Everything that a command may touch. */
export interface Page {
  readonly state: Observed<PageState>;
  readonly client: Client;
  readonly keep: Keep;
  /** What this browser keeps besides edits. */
  readonly notes: KeptNotes;
  /** A name that no other book has. */
  readonly newId: () => string;
  readonly words: Words;
  readonly solveRemedies: SolveRemedies;
  readonly compareBooks: CompareBooks;
  /** Runs something later, e.g. the next try to reach the server. */
  readonly later: (run: () => void, milliseconds: number) => void;
  readonly author: string;
}
