import type { RevisionMark } from '../book/by-revision.ts';
import { accept, type Result, refuse } from '../quantity/problem.ts';
import { canonicalJson } from '../record/canonical-json.ts';
import { type Head, isCount, isHash, isToken } from '../record/envelope.ts';
import { archiveProblem } from './problems.ts';

/** One revision of the book, by whom and when; its text stands in the archive under its digest. */
export type ArchivedRevision = RevisionMark;

export interface ArchivedMedia {
  readonly sha256: string;
  readonly mediaType: string;
  readonly bytes: number;
}

/** What an archive holds. */
export interface Manifest {
  readonly book: string;
  readonly revisions: readonly ArchivedRevision[];
  readonly records: {
    readonly count: number;
    /** Of the file of records. */
    readonly sha256: string;
    readonly heads: readonly Head[];
  };
  readonly media: readonly ArchivedMedia[];
}

const FORMAT = 'twinfloor-archive';
const VERSION = 1;

/** The manifest's text: canonical JSON (RFC 8785) and a line feed. */
export const manifestText = (manifest: Manifest): string => {
  const text = canonicalJson({ format: FORMAT, version: VERSION, ...manifest });
  // made of what was checked when it came into the store
  if (!text.ok) throw new Error(`a manifest is not JSON: ${JSON.stringify(text.problems)}`);
  return `${text.value}\n`;
};

type Given = Readonly<Record<string, unknown>>;
const isObject = (value: unknown): value is Given =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const isText = (value: unknown): value is string => typeof value === 'string';

const isRevision = (value: unknown): value is ArchivedRevision =>
  isObject(value) &&
  isCount(value.number) &&
  value.number > 0 &&
  isHash(value.sha256) &&
  isText(value.author) &&
  isText(value.savedAt) &&
  (value.reason === undefined || isText(value.reason)) &&
  (value.number === 1 ? value.follows === undefined : isHash(value.follows));

const isMedia = (value: unknown): value is ArchivedMedia =>
  isObject(value) && isHash(value.sha256) && isText(value.mediaType) && isCount(value.bytes);

const isHead = (value: unknown): value is Head =>
  isObject(value) &&
  isToken(value.book) &&
  isToken(value.writer) &&
  isCount(value.sequence) &&
  isHash(value.hash);

const allOf = <T>(value: unknown, is: (one: unknown) => one is T): value is readonly T[] =>
  Array.isArray(value) && value.every(is);

const readJson = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
};

/** Reads a manifest. Problems: ARCHIVE_MANIFEST, ARCHIVE_FROM_FUTURE. */
export const readManifest = (text: string): Result<Manifest> => {
  const wrong = (path: string, allowed: string) =>
    refuse(archiveProblem('ARCHIVE_MANIFEST', `manifest.json${path}`, { allowed }));
  const value = readJson(text);
  if (!isObject(value) || value.format !== FORMAT || !isCount(value.version) || value.version === 0) {
    return wrong('', `format ${FORMAT}, version, book, revisions, records and media`);
  }
  if (value.version > VERSION) {
    const rest = { given: value.version, allowed: String(VERSION) };
    return refuse(archiveProblem('ARCHIVE_FROM_FUTURE', 'manifest.json', rest));
  }
  const { book, revisions, records, media } = value;
  if (!isToken(book)) return wrong('/book', 'letters, digits and . _ : - (1 to 128)');
  if (!allOf(revisions, isRevision) || !revisions.some(({ number }) => number === 1)) {
    return wrong(
      '/revisions',
      'a list from number 1, each with sha256, author, savedAt, and follows but for the first',
    );
  }
  if (
    !isObject(records) ||
    !isCount(records.count) ||
    !isHash(records.sha256) ||
    !allOf(records.heads, isHead)
  ) {
    return wrong('/records', 'count, sha256 and heads');
  }
  if (!allOf(media, isMedia)) return wrong('/media', 'a list of sha256, mediaType and bytes');
  const { count, sha256, heads } = records;
  return accept({ book, revisions, records: { count, sha256, heads }, media });
};
