import type { Book } from '../../book/index.ts';
import type { Remedy } from '../../floor/assessment.ts';
import type { BookAsFound, FoundReading, PromisedAndFound } from '../../floor/found/index.ts';
import type { BookComparison } from '../../floor/index.ts';
import type { Client } from '../../server/client.ts';
import type { Words } from '../words/words.ts';
import type { Ahead } from './ahead.ts';
import type { Keep } from './kept-edits.ts';
import type { KeptNotes } from './kept-notes.ts';
import type { MediaQueue } from './media-queue.ts';
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

export interface BesideQuestion {
  readonly book: Book;
  readonly readings: readonly FoundReading[];
}

export type BesideAnswer =
  | {
      readonly places: readonly PromisedAndFound[];
      readonly refused: BookAsFound['refused'];
    }
  | 'failed';

/** Sets what was read beside what was promised, away from the page; gives back how to give it up. */
export type SetBeside = (question: BesideQuestion, answer: (answer: BesideAnswer) => void) => () => void;

/** Everything that a command may touch. */
export interface Page {
  readonly state: Observed<PageState>;
  readonly client: Client;
  readonly keep: Keep;
  /** What this browser keeps besides edits. */
  readonly notes: KeptNotes;
  /** Pictures, films and sounds on their way to the server. */
  readonly media: MediaQueue;
  /** A name that no other book has. */
  readonly newId: () => string;
  /** Bytes of chance that are fit for a key. */
  readonly random: (bytes: number) => Uint8Array;
  /** The browser's own ciphers: it has them on a page of this machine or over TLS alone. */
  readonly subtle: SubtleCrypto | undefined;
  readonly words: Words;
  readonly solveRemedies: SolveRemedies;
  readonly compareBooks: CompareBooks;
  readonly setBeside: SetBeside;
  /** Now, RFC 3339 in UTC, by the clock of this device. */
  readonly now: () => string;
  /** Runs something later, e.g. the next try to reach the server. */
  readonly later: (run: () => void, milliseconds: number) => void;
  /** What was asked for at a press. */
  readonly ahead: Ahead;
  readonly author: string;
  /** Whether the browser runs on the machine that keeps the books. */
  readonly atLaptop: boolean;
}
