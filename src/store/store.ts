import type { RevisionMark } from '../book/by-revision.ts';
import type { Result } from '../quantity/problem.ts';
import type { ChainEnd, ClockDoubt } from '../record/clocked.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import type { Replacing } from '../record/standing.ts';

/** One state of a book as someone saved it. Never changed or removed; undoing saves the old text anew. */
export interface Revision extends RevisionEntry {
  /** The book's file, character for character. */
  readonly text: string;
}

export interface RevisionEntry {
  readonly book: string;
  /** From 1, without gaps. */
  readonly number: number;
  /** SHA-256 of the text in UTF-8. */
  readonly sha256: string;
  readonly author: string;
  readonly reason?: string;
  readonly savedAt: string;
  /** The revision that the author had before them; absent for the first. */
  readonly basedOn?: number;
}

export interface BookEntry {
  readonly book: string;
  readonly latest: RevisionEntry;
}

export interface NewBook {
  readonly book: string;
  readonly text: string;
  readonly author: string;
  readonly reason?: string;
  /** Time of saving, RFC 3339; the caller's clock. */
  readonly at: string;
}

export interface NewRevision extends NewBook {
  /** Must be the latest, else someone else's change would be lost unseen. */
  readonly basedOn: number;
}

export interface Appended {
  /** Ids that are new. */
  readonly added: readonly string[];
  /** Ids that were here already, the same to the last byte. */
  readonly known: readonly string[];
}

export interface RecordPage {
  /** In the order in which they came. */
  readonly records: readonly Envelope[];
  /** Hand it back as `since` to read on. It counts within this store only. */
  readonly position: number;
  /** Whether the page's limit cut it. */
  readonly more: boolean;
}

export interface ReadFrom {
  /** What came behind this position, the first of them first. */
  readonly since?: number;
  readonly most?: number;
}

/** A record with the moment at which it was written, as far as its chain can tell: ms since 1970. */
export interface PlacedRecord {
  readonly record: Envelope;
  readonly moment: number;
}

export interface ReadStanding {
  /** The position up to which records count; absent, all that are there. */
  readonly until?: number;
  /** What counts behind this position alone. */
  readonly since?: number;
  readonly most?: number;
}

/** What counts of the records of a book, as `Standing` has it. */
export interface StandingPage {
  /** In the order in which they came. */
  readonly records: readonly PlacedRecord[];
  readonly ends: readonly ChainEnd[];
  readonly replacing: readonly Replacing[];
  readonly doubts: readonly ClockDoubt[];
  /** Hand it back as `until`, and `position` as `since`, to read on in the same state. */
  readonly until: number;
  readonly position: number;
  readonly more: boolean;
}

/** A picture, film or sound as whoever brings it says that it is. */
export interface SaidMedia {
  /** SHA-256 of the bytes. */
  readonly sha256: string;
  readonly mediaType: string;
}

export interface MediaEntry extends SaidMedia {
  readonly bytes: number;
}

/** Bytes from one place to before another. */
export interface MediaPart {
  readonly from: number;
  readonly to: number;
}

/**
 * Where books and records are kept. Whoever is acknowledged is on the disk: a promise that resolves has
 * been synced.
 *
 * What does not fit is returned as problems (conflict, unknown book, wrong input), with nothing written.
 * Where the world fails (disk full, read only, damaged, busy) the promise rejects with a StoreFailure,
 * with nothing written. Every write may be repeated: the same content once more is no second write.
 */
export interface Store {
  readonly listBooks: () => Promise<readonly BookEntry[]>;
  readonly createBook: (first: NewBook) => Promise<Result<RevisionEntry>>;
  readonly latestRevision: (book: string) => Promise<Result<Revision>>;
  readonly readRevision: (book: string, number: number) => Promise<Result<Revision>>;
  readonly listRevisions: (book: string) => Promise<Result<readonly RevisionEntry[]>>;
  readonly appendRevision: (next: NewRevision) => Promise<Result<RevisionEntry>>;
  /** Every revision with those that are kept aside, by number and moment. */
  readonly allRevisions: (book: string) => Promise<Result<readonly RevisionMark[]>>;
  /** Those that are kept aside, in the same order: which holds is for people to say. */
  readonly asideRevisions: (book: string) => Promise<Result<readonly RevisionMark[]>>;
  /** Text of any of them, by its digest. */
  readonly revisionText: (book: string, sha256: string) => Promise<Result<string>>;
  /**
   * Takes in a revision that was saved elsewhere, and makes the book where there is none: added where it follows what
   * stands here, else kept aside.
   */
  readonly takeRevision: (
    book: string,
    revision: RevisionMark,
    text: string,
  ) => Promise<Result<'added' | 'known' | 'aside'>>;
  /** All of them or none. Each writer's records come in order and without gaps. */
  readonly appendRecords: (book: string, records: readonly Envelope[]) => Promise<Result<Appended>>;
  readonly readRecords: (book: string, from?: ReadFrom) => Promise<Result<RecordPage>>;
  /** Records of one writer behind a place of its chain, the first of them first; absent, from the first. */
  readonly readChain: (
    book: string,
    writer: string,
    from?: { readonly behind?: number; readonly most?: number },
  ) => Promise<Result<readonly Envelope[]>>;
  /** What counts now: of the tries of a check the last alone. */
  readonly standing: (book: string, from?: ReadStanding) => Promise<Result<StandingPage>>;
  /** The last tries of a check that nothing replaces, first to last, and how many there are in all. */
  readonly triesOf: (
    book: string,
    floor: string,
    check: string,
    most: number,
  ) => Promise<Result<{ readonly records: readonly PlacedRecord[]; readonly total: number }>>;
  /** Last record of each writer, by writer. */
  readonly heads: (book: string) => Promise<Result<readonly Head[]>>;
  /** Keeps a picture, film or sound of a book, once its bytes are what is said of them. */
  readonly putMedia: (
    book: string,
    said: SaidMedia,
    chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
  ) => Promise<Result<MediaEntry & { readonly isNew: boolean }>>;
  /** By digest. */
  readonly listMedia: (book: string) => Promise<Result<readonly MediaEntry[]>>;
  readonly readMedia: (
    book: string,
    sha256: string,
    part?: MediaPart,
  ) => Promise<Result<MediaEntry & { readonly content: AsyncIterable<Uint8Array> }>>;
  /** Bytes that are free on its disk. */
  readonly freeBytes: () => Promise<number>;
  /** Ends it; twice does no harm. */
  readonly close: () => Promise<void>;
}
