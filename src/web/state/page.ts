import type { Book } from '../../book/index.ts';
import type { Remedy } from '../../floor/assessment.ts';
import type { Client } from '../../server/client.ts';
import type { Words } from '../words/words.ts';
import type { Keep } from './kept-edits.ts';
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

/** Everything that a command may touch. */
export interface Page {
  readonly state: Observed<PageState>;
  readonly client: Client;
  readonly keep: Keep;
  readonly words: Words;
  readonly solveRemedies: SolveRemedies;
  /** Runs something later, e.g. the next try to reach the server. */
  readonly later: (run: () => void, milliseconds: number) => void;
  readonly author: string;
}
