import { accept, type Problem, type Result } from '../quantity/problem.ts';
import { headsOf } from '../record/heads.ts';
import { toHex } from '../record/hex.ts';
import { exportRecords } from '../record/record-file.ts';
import { sha256 } from '../record/sha256.ts';
import type { ArchivePlace } from './archive-place.ts';
import { type ArchivedMedia, type Manifest, manifestText } from './manifest.ts';
import { manifestName, mediaName, recordsName, revisionName } from './part-names.ts';
import { type ZipPart, zipPieces } from './zip-writer.ts';

const utf8 = new TextEncoder();

/** Thrown out of the flow of pieces: what was listed is gone while the archive is made. */
export class ArchiveFailure extends Error {
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(({ code }) => code).join(', '));
    this.name = 'ArchiveFailure';
    this.problems = problems;
  }
}

const held = <T>(result: Result<T>): T => {
  if (!result.ok) throw new ArchiveFailure(result.problems);
  return result.value;
};

const wholeOf = async (chunks: AsyncIterable<Uint8Array>, size: number): Promise<Uint8Array> => {
  const bytes = new Uint8Array(size);
  let at = 0;
  for await (const chunk of chunks) {
    // a file that grew since is not the one that was listed; its digest will say so
    bytes.set(chunk.subarray(0, size - at), at);
    at = Math.min(size, at + chunk.length);
  }
  return bytes.subarray(0, at);
};

/** The files that are there; one that the disk has lost is left out, and the records that name it say so. */
const mediaThere = async (place: ArchivePlace, book: string): Promise<readonly ArchivedMedia[]> => {
  const there: ArchivedMedia[] = [];
  for (const one of held(await place.listMedia(book))) {
    if ((await place.readMedia(book, one.sha256)).ok) there.push(one);
  }
  return there;
};

const partsOf = async function* (
  place: ArchivePlace,
  manifest: Manifest,
  records: Uint8Array,
): AsyncGenerator<ZipPart> {
  const { book, revisions, media } = manifest;
  yield { name: manifestName, bytes: utf8.encode(manifestText(manifest)) };
  yield { name: recordsName, bytes: records };
  for (const digest of [...new Set(revisions.map((one) => one.sha256))].sort()) {
    const text = held(await place.revisionText(book, digest));
    yield { name: revisionName(digest), bytes: utf8.encode(text) };
  }
  for (const { sha256: digest, mediaType, bytes } of media) {
    const { content } = held(await place.readMedia(book, digest));
    yield { name: mediaName(digest, mediaType), bytes: await wholeOf(content, bytes) };
  }
};

/** An archive about to be written. */
export interface PackedArchive {
  readonly manifest: Manifest;
  /** Of the manifest: what is told to the other party by another way fixes everything in the archive. */
  readonly sha256: string;
  /** Throws an ArchiveFailure where something that was listed is gone. */
  readonly pieces: AsyncGenerator<Uint8Array>;
}

/**
 * The whole of a book as one file.
 *
 * Method   manifest, records as their own file, texts of revisions, media; everything in one order
 * Symbols  place  where the book is kept;  book  its id
 * Returns  manifest and the bytes, piece by piece; equal content gives equal bytes
 * Problems those of the place
 * Assumes  nothing is removed from the place, which holds for a store
 * Cost     O(bytes); memory of the records and of the largest file
 * Source   docs/archive.md
 */
export const packArchive = async (place: ArchivePlace, book: string): Promise<Result<PackedArchive>> => {
  const revisions = await place.allRevisions(book);
  if (!revisions.ok) return revisions;
  const read = await place.readRecords(book);
  if (!read.ok) return read;
  const records = utf8.encode(exportRecords(book, read.value.records));
  const manifest: Manifest = {
    book,
    revisions: revisions.value,
    records: {
      count: read.value.records.length,
      sha256: toHex(sha256(records)),
      heads: headsOf(read.value.records),
    },
    media: await mediaThere(place, book),
  };
  return accept({
    manifest,
    sha256: toHex(sha256(utf8.encode(manifestText(manifest)))),
    pieces: zipPieces(partsOf(place, manifest, records)),
  });
};
