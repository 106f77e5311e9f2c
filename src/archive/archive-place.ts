import type { Result } from '../quantity/problem.ts';
import type { Envelope, Head } from '../record/envelope.ts';
import type { ArchivedMedia, ArchivedRevision } from './manifest.ts';

/** How a revision came in: it follows the last one here, was here already, or stands beside another of its number. */
export type TakenRevision = 'added' | 'known' | 'aside';

/** Where a book is kept, as far as an archive is made of it or joined into it. The store is one. */
export interface ArchivePlace {
  /** Every revision, also those kept aside, by number and moment. */
  readonly allRevisions: (book: string) => Promise<Result<readonly ArchivedRevision[]>>;
  readonly revisionText: (book: string, sha256: string) => Promise<Result<string>>;
  readonly takeRevision: (
    book: string,
    revision: ArchivedRevision,
    text: string,
  ) => Promise<Result<TakenRevision>>;
  readonly readRecords: (book: string) => Promise<Result<{ readonly records: readonly Envelope[] }>>;
  readonly heads: (book: string) => Promise<Result<readonly Head[]>>;
  readonly appendRecords: (
    book: string,
    records: readonly Envelope[],
  ) => Promise<Result<{ readonly added: readonly string[] }>>;
  /** Bytes that are free on its disk. */
  readonly freeBytes: () => Promise<number>;
  readonly listMedia: (book: string) => Promise<Result<readonly ArchivedMedia[]>>;
  readonly readMedia: (
    book: string,
    sha256: string,
  ) => Promise<Result<{ readonly content: AsyncIterable<Uint8Array> }>>;
  readonly putMedia: (
    book: string,
    said: { readonly sha256: string; readonly mediaType: string },
    chunks: Iterable<Uint8Array>,
  ) => Promise<Result<{ readonly isNew: boolean }>>;
}
