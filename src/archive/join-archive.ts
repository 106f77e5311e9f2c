import { byRevision } from '../book/by-revision.ts';
import { accept, type Problem, type Result, refuse } from '../quantity/problem.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import type { ArchivePlace } from './archive-place.ts';
import { clockProblems } from './clock-problems.ts';
import type { Archive } from './open-archive.ts';
import { archiveProblem } from './problems.ts';
import { roomFor, roomProblem } from './room.ts';

/** What became of an archive. */
export interface Joined {
  readonly book: string;
  readonly revisions: { readonly added: number; readonly aside: number; readonly known: number };
  readonly records: { readonly added: number; readonly known: number };
  readonly media: { readonly added: number; readonly known: number };
  /** What a person should look at; the rest was taken all the same. */
  readonly told: readonly Problem[];
}

/** The most records that go into the store in one piece. */
const mostAtOnce = 1000;

/** Books without a revision here have none to be joined with. */
const hereAlready = async (place: ArchivePlace, book: string): Promise<readonly Envelope[]> => {
  const read = await place.readRecords(book);
  return read.ok ? read.value.records : [];
};

const byWriter = (records: readonly Envelope[]): ReadonlyMap<string, readonly Envelope[]> => {
  const writers = new Map<string, Envelope[]>();
  for (const record of records) {
    const chain = writers.get(record.writer);
    if (chain === undefined) writers.set(record.writer, [record]);
    else chain.push(record);
  }
  return writers;
};

/** Where two chains of one writer part: the first place at which both have a record and not the same. */
const parting = (here: readonly Envelope[], there: readonly Envelope[]): Problem | undefined => {
  const known = new Map(here.map(({ sequence, hash }) => [sequence, hash]));
  const apart = there.find((record) => (known.get(record.sequence) ?? record.hash) !== record.hash);
  if (apart === undefined) return undefined;
  const { writer, sequence, hash } = apart;
  const rest = { given: hash, allowed: String(known.get(sequence)), parts: { writer, sequence } };
  return archiveProblem('ARCHIVE_RECORDS_APART', '/records', rest);
};

interface TakenRecords {
  readonly added: number;
  readonly told: readonly Problem[];
}

const takeChain = async (
  place: ArchivePlace,
  book: string,
  here: readonly Envelope[],
  there: readonly Envelope[],
): Promise<TakenRecords> => {
  const apart = parting(here, there);
  if (apart !== undefined) return { added: 0, told: [apart] };
  const fresh = there.slice(here.length);
  let added = 0;
  for (let at = 0; at < fresh.length; at += mostAtOnce) {
    const done = await place.appendRecords(book, fresh.slice(at, at + mostAtOnce));
    if (!done.ok) {
      const parts = { writer: there[0]?.writer ?? '', code: done.problems[0]?.code ?? '' };
      return { added, told: [archiveProblem('ARCHIVE_RECORDS_REFUSED', '/records', { parts })] };
    }
    added += done.value.added.length;
  }
  return { added, told: [] };
};

const takeRecords = async (
  place: ArchivePlace,
  { manifest: { book }, records }: Archive,
): Promise<TakenRecords> => {
  const here = byWriter(await hereAlready(place, book));
  let added = 0;
  const told: Problem[] = [];
  for (const [writer, there] of byWriter(records)) {
    const taken = await takeChain(place, book, here.get(writer) ?? [], there);
    added += taken.added;
    told.push(...taken.told);
  }
  return { added, told };
};

/** Files that records which count name, and that are nowhere. */
const absentMedia = async (place: ArchivePlace, book: string): Promise<readonly Problem[]> => {
  const listed = await place.listMedia(book);
  const there = new Set(listed.ok ? listed.value.map(({ sha256 }) => sha256) : []);
  const { current } = currentRecords(await hereAlready(place, book));
  const named = current.flatMap(({ kind, body }) => {
    const { sha256 } = (body ?? {}) as { readonly sha256?: unknown };
    return kind === 'media' && typeof sha256 === 'string' ? [sha256] : [];
  });
  return [...new Set(named)]
    .filter((digest) => !there.has(digest))
    .map((given) => archiveProblem('ARCHIVE_MEDIA_ABSENT', '/media', { given }));
};

/** Whether the disk has room for what is new of it. */
const wantsRoom = async (
  place: ArchivePlace,
  { manifest: { book, media }, textBytes }: Archive,
): Promise<Problem | undefined> => {
  const listed = await place.listMedia(book);
  const there = new Set(listed.ok ? listed.value.map(({ sha256 }) => sha256) : []);
  const fresh = media.filter(({ sha256 }) => !there.has(sha256));
  return roomProblem(roomFor(textBytes, fresh), await place.freeBytes());
};

/**
 * Takes an archive into a place: the union of both, and nothing here is changed.
 *
 * Method   revisions in their order, each added where it follows what stands here, else kept aside; files by digest;
 *          each writer's records behind those that are here
 * Symbols  place  where the book is kept;  archive  one that openArchive has looked at;  only  the book that is meant
 * Returns  what was taken, and what a person should look at
 * Problems ARCHIVE_OTHER_BOOK, ARCHIVE_NO_ROOM, those of the place; what was taken before stays, and taking it again goes on
 * Assumes  nothing: joined in any order, any number of times, two places come to hold the same
 * Cost     O(n) in the archive and in the records that are here
 * Source   definition
 */
export const joinArchive = async (
  place: ArchivePlace,
  archive: Archive,
  only?: string,
): Promise<Result<Joined>> => {
  const { book, revisions, media } = archive.manifest;
  if (only !== undefined && only !== book) {
    return refuse(archiveProblem('ARCHIVE_OTHER_BOOK', '', { given: book, allowed: only }));
  }
  const full = await wantsRoom(place, archive);
  if (full !== undefined) return refuse(full);
  const told: Problem[] = [];
  const count = { added: 0, aside: 0, known: 0 };
  for (const revision of [...revisions].sort(byRevision)) {
    const text = await archive.revisionText(revision.sha256);
    if (!text.ok) return text;
    const taken = await place.takeRevision(book, revision, text.value);
    if (!taken.ok) return taken;
    count[taken.value] += 1;
    if (taken.value === 'aside') {
      const parts = { by: revision.author, at: revision.savedAt };
      told.push(archiveProblem('ARCHIVE_REVISION_ASIDE', '/revisions', { given: revision.number, parts }));
    }
  }
  let files = 0;
  for (const one of media) {
    const bytes = await archive.media(one);
    if (!bytes.ok) return bytes;
    const put = await place.putMedia(book, one, [bytes.value]);
    if (!put.ok) return put;
    if (put.value.isNew) files += 1;
  }
  const records = await takeRecords(place, archive);
  told.push(...records.told, ...clockProblems(archive.records), ...(await absentMedia(place, book)));
  return accept({
    book,
    revisions: count,
    records: { added: records.added, known: archive.records.length - records.added },
    media: { added: files, known: media.length - files },
    told,
  });
};
