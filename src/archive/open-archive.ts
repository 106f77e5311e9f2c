import { checkMedia } from '../media/index.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import type { Envelope } from '../record/envelope.ts';
import { toHex } from '../record/hex.ts';
import { importRecords } from '../record/record-file.ts';
import { sha256 } from '../record/sha256.ts';
import { verifyRecords } from '../record/verify-records.ts';
import type { ByteSource } from './byte-source.ts';
import { type ArchivedMedia, type Manifest, readManifest } from './manifest.ts';
import { manifestName, mediaName, recordsName, revisionName } from './part-names.ts';
import { archiveProblem } from './problems.ts';
import { readPart, type ZipEntry, zipDirectory } from './zip-reader.ts';

/** An archive whose every part is what its manifest says. */
export interface Archive {
  readonly manifest: Manifest;
  readonly records: readonly Envelope[];
  /** Bytes of all that is no picture, film or sound. */
  readonly textBytes: number;
  readonly revisionText: (sha256: string) => Promise<Result<string>>;
  readonly media: (media: ArchivedMedia) => Promise<Result<Uint8Array>>;
}

const textOf = (bytes: Uint8Array, name: string): Result<string> => {
  try {
    // a byte order mark is part of a book's text
    return accept(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes));
  } catch {
    return refuse(archiveProblem('ARCHIVE_PART_BROKEN', name));
  }
};

/** Whether a text may be a book at all; an old one that newer rules refuse is still one. */
const isJsonObject = (text: string): boolean => {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && !Array.isArray(value);
  } catch {
    return false;
  }
};

/** The names that the manifest calls for. */
const namesOf = ({ revisions, media }: Manifest): ReadonlySet<string> =>
  new Set([
    manifestName,
    recordsName,
    ...revisions.map((one) => revisionName(one.sha256)),
    ...media.map((one) => mediaName(one.sha256, one.mediaType)),
  ]);

/** Parts that the manifest names and are not there, and those that are there without being named. */
const listProblems = (manifest: Manifest, entries: ReadonlyMap<string, ZipEntry>): readonly Problem[] => {
  const names = namesOf(manifest);
  return [
    ...[...names]
      .filter((name) => !entries.has(name))
      .map((name) => archiveProblem('ARCHIVE_PART_ABSENT', name)),
    ...[...entries.keys()]
      .filter((name) => !names.has(name))
      .map((name) => archiveProblem('ARCHIVE_PART_UNLISTED', name)),
  ];
};

/**
 * Opens an archive and looks at all of it before anything of it is used.
 *
 * Method   directory, manifest, each part against its digest, each chain of records and its heads, each file against
 *          what it is said to be
 * Symbols  source  the archive
 * Returns  archive; its parts are read when they are asked for
 * Problems ARCHIVE_*, RECORD_*, MEDIA_*: every one that was found
 * Assumes  nothing
 * Cost     O(bytes), memory of the largest part
 * Source   docs/archive.md
 */
export const openArchive = async (source: ByteSource): Promise<Result<Archive>> => {
  const directory = await zipDirectory(source);
  if (!directory.ok) return directory;
  const entries = directory.value;
  const part = async (name: string): Promise<Result<Uint8Array>> => {
    const entry = entries.get(name);
    return entry === undefined
      ? refuse(archiveProblem('ARCHIVE_PART_ABSENT', name))
      : readPart(source, entry);
  };
  const whole = async (name: string, digest: string): Promise<Result<Uint8Array>> => {
    const bytes = await part(name);
    if (!bytes.ok) return bytes;
    const given = toHex(sha256(bytes.value));
    return given === digest
      ? bytes
      : refuse(archiveProblem('ARCHIVE_DIGEST', name, { given, allowed: digest }));
  };

  const first = await part(manifestName);
  if (!first.ok) return first;
  const manifestSaid = textOf(first.value, manifestName);
  const manifest = manifestSaid.ok ? readManifest(manifestSaid.value) : manifestSaid;
  if (!manifest.ok) return manifest;
  const listed = listProblems(manifest.value, entries);
  if (listed.length > 0) return refuse(...listed);
  const { book, revisions, media, records: said } = manifest.value;

  const problems: Problem[] = [];
  const revisionText = async (digest: string): Promise<Result<string>> => {
    const name = revisionName(digest);
    const bytes = await whole(name, digest);
    const text = bytes.ok ? textOf(bytes.value, name) : bytes;
    return text.ok && !isJsonObject(text.value) ? refuse(archiveProblem('ARCHIVE_PART_BROKEN', name)) : text;
  };
  for (const digest of new Set(revisions.map((one) => one.sha256))) {
    const text = await revisionText(digest);
    if (!text.ok) problems.push(...text.problems);
  }
  const mediaBytes = async (one: ArchivedMedia): Promise<Result<Uint8Array>> => {
    const name = mediaName(one.sha256, one.mediaType);
    const bytes = await whole(name, one.sha256);
    if (!bytes.ok) return bytes;
    const wrong = checkMedia(bytes.value, { mediaType: one.mediaType, bytes: bytes.value.length }, name);
    if (wrong.length === 0) return bytes;
    // what is wrong with a file names none: here it is one of thousands
    return refuse(archiveProblem('ARCHIVE_MEDIA', name, { given: one.mediaType }), ...wrong);
  };
  for (const one of media) {
    const bytes = await mediaBytes(one);
    if (!bytes.ok) problems.push(...bytes.problems);
  }

  const bytes = await whole(recordsName, said.sha256);
  const text = bytes.ok ? textOf(bytes.value, recordsName) : bytes;
  const file = text.ok ? importRecords(text.value) : text;
  if (!file.ok) return refuse(...problems, ...file.problems);
  if (file.value.book !== book) {
    problems.push(
      archiveProblem('ARCHIVE_OTHER_BOOK', recordsName, { given: file.value.book, allowed: book }),
    );
  } else {
    const heads = [...file.value.heads, ...said.heads];
    problems.push(...verifyRecords(file.value.records, { book, heads }));
  }
  return problems.length > 0
    ? refuse(...problems)
    : accept({
        manifest: manifest.value,
        records: file.value.records,
        textBytes: [...entries.values()]
          .filter(({ name }) => !name.startsWith('media/'))
          .reduce((sum, { unpacked }) => sum + unpacked, 0),
        revisionText,
        media: mediaBytes,
      });
};
