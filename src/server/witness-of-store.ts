import { buffer } from 'node:stream/consumers';
import { bookUnits } from '../book/book-units.ts';
import type { Book } from '../book/index.ts';
import { assessBook } from '../floor/index.ts';
import { type BookProof, proofOfRecords, type RecordsInTime } from '../proof/index.ts';
import type { UnitSystem } from '../quantity/index.ts';
import { tryKey } from '../record/standing.ts';
import type { Revision, StandingPage, Store } from '../store/store.ts';
import type { Translation } from '../text/index.ts';
import { makeWitnessFile, mediaWanted, type WitnessFile } from '../witness/index.ts';

/** The last tries of a check that a witness sees: a check that was tried a hundred times makes no file of its own. */
const mostTries = 20;

const inTimeOf = ({ records, ends, doubts }: StandingPage): RecordsInTime => ({
  records: records.map(({ record }) => record),
  moments: new Map(records.map(({ record, moment }) => [record.id, moment])),
  ends: new Map(ends.map((end) => [end.writer, end])),
  doubts,
});

/** What counts, and with it the last tries of each check that was tried. */
const withTries = async (
  store: Store,
  book: string,
  standing: RecordsInTime,
  { floors }: BookProof,
): Promise<{ readonly recorded: RecordsInTime; readonly triesLeft: ReadonlyMap<string, number> }> => {
  const records = new Map(standing.records.map((record) => [record.id, record]));
  const moments = new Map(standing.moments);
  const triesLeft = new Map<string, number>();
  for (const { floor, checks } of floors) {
    for (const { check } of checks.filter(({ inForce }) => inForce !== undefined)) {
      const tries = await store.triesOf(book, floor, check.id, mostTries);
      if (!tries.ok) continue;
      for (const { record, moment } of tries.value.records) {
        records.set(record.id, record);
        moments.set(record.id, moment);
      }
      const left = tries.value.total - tries.value.records.length;
      if (left > 0) triesLeft.set(tryKey(floor, check.id), left);
    }
  }
  return { recorded: { ...standing, records: [...records.values()], moments }, triesLeft };
};

/** Bytes of pictures, films and sounds that are here, one after the other. */
const bytesOf = async (
  store: Store,
  book: string,
  wanted: readonly string[],
): Promise<ReadonlyMap<string, Uint8Array>> => {
  const found = new Map<string, Uint8Array>();
  for (const digest of wanted) {
    const media = await store.readMedia(book, digest);
    if (media.ok) found.set(digest, await buffer(media.value.content));
  }
  return found;
};

/**
 * The file for a witness, of a revision and what is recorded.
 *
 * Cost  memory of what counts and of the file, however many records there are
 */
export const witnessOfStore = async (
  store: Store,
  {
    book,
    page,
    revision: { book: id, number, sha256 },
    ...rest
  }: {
    readonly book: Book;
    readonly revision: Revision;
    /** What counts. */
    readonly page: StandingPage;
    /** Day on which it is made, as 2027-03-08. */
    readonly date: string;
    readonly translation: Translation | undefined;
    readonly units: UnitSystem | undefined;
  },
): Promise<WitnessFile> => {
  const standing = inTimeOf(page);
  const assessment = assessBook(book);
  const proof = proofOfRecords(book, assessment, standing);
  return makeWitnessFile({
    ...rest,
    book,
    id,
    revision: number,
    hash: sha256,
    assessment,
    ...(await withTries(store, id, standing, proof)),
    media: await bytesOf(store, id, mediaWanted(standing.records, proof)),
    units: bookUnits(book, rest.units),
  });
};
