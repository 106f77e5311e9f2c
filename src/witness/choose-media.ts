import { checkMedia } from '../media/index.ts';
import type { BookProof } from '../proof/index.ts';
import { currentRecords } from '../record/current-records.ts';
import type { Envelope } from '../record/envelope.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';

/** What a record says of a picture, film or sound. */
export interface SaidOfMedia {
  readonly sha256: string;
  readonly mediaType: string;
  readonly bytes: number;
  readonly by: string;
  readonly caption?: string;
  readonly moment?: string;
  readonly name?: string;
}

/** Why one is not in the file. */
export type LeftOut =
  /** It would have made the file larger than was asked for. */
  | 'large'
  /** Its bytes are not at hand. */
  | 'absent'
  /** Its bytes are not those that were recorded. */
  | 'damaged'
  /** It is not what it is said to be. */
  | 'strange';

export interface ChosenMedia {
  readonly said: ReadonlyMap<string, SaidOfMedia>;
  /** Bytes of those that are in the file, by their digest. */
  readonly included: ReadonlyMap<string, Uint8Array>;
  readonly leftOut: ReadonlyMap<string, LeftOut>;
  /** Where each stands: the first place that names it, any other leads there. */
  readonly homes: ReadonlyMap<string, string>;
}

/** Name of the place of a check's evidence, and of a punch point's. */
export const homeOfCheck = (floor: string, check: string): string => JSON.stringify([floor, check]);
export const homeOfPoint = (point: string): string => JSON.stringify([point]);

/** Twelve megabytes are sixteen as text: what a mail still takes with the rest of the file. */
export const mostMediaOfMail = 12_000_000;

const mediaRecords = (records: readonly Envelope[]): ReadonlyMap<string, SaidOfMedia> =>
  new Map(
    currentRecords(records)
      // photographs came before media and say the same
      .current.filter(({ kind, version }) => version === 1 && (kind === 'media' || kind === 'photograph'))
      .map(({ body }) => [(body as SaidOfMedia).sha256, body as SaidOfMedia]),
  );

/** Digests with their homes, in the order in which they tell: what checks name, then punch points, then the rest. */
const homesOf = ({ floors, punch }: BookProof, said: Iterable<string>): ReadonlyMap<string, string> => {
  const homes = new Map<string, string>();
  const settle = (digests: readonly string[], home: string): void => {
    for (const digest of digests) if (!homes.has(digest)) homes.set(digest, home);
  };
  for (const { floor, checks } of floors) {
    for (const { check, inForce } of checks) {
      settle(inForce?.result.evidence ?? [], homeOfCheck(floor, check.id));
    }
  }
  for (const { point, evidence } of punch) settle(evidence, homeOfPoint(point));
  settle([...said], '');
  return homes;
};

/**
 * The pictures, films and sounds that go into a file.
 *
 * Method   what checks name goes first, then punch points, then the rest; one after the other while there is room, the
 *          next smaller one may still find some. As they were taken: nothing is made smaller or anew
 * Symbols  media  bytes by digest, as many as are at hand;  most  bytes of all together
 * Returns  which are in, and why each other is not
 * Cost     O(bytes) for the digests
 */
export const chooseMedia = (
  records: readonly Envelope[],
  proof: BookProof,
  media: ReadonlyMap<string, Uint8Array>,
  most: number,
): ChosenMedia => {
  const said = mediaRecords(records);
  const included = new Map<string, Uint8Array>();
  const leftOut = new Map<string, LeftOut>();
  let room = most;
  const homes = homesOf(proof, said.keys());
  for (const digest of homes.keys()) {
    // evidence that no record tells of is no picture of the book
    const record = said.get(digest);
    if (record === undefined) continue;
    const bytes = media.get(digest);
    if (record.bytes > room) leftOut.set(digest, 'large');
    else if (bytes === undefined) leftOut.set(digest, 'absent');
    else if (toHex(sha256(bytes)) !== digest) leftOut.set(digest, 'damaged');
    else if (checkMedia(bytes, { ...record, bytes: bytes.length }).length > 0) leftOut.set(digest, 'strange');
    else if (bytes.length > room) leftOut.set(digest, 'large');
    else {
      room -= bytes.length;
      included.set(digest, bytes);
    }
  }
  return { said, included, leftOut, homes };
};

/** Digests of those for which there is room by what is said of their size: the others need not be fetched. */
export const mediaWanted = (
  records: readonly Envelope[],
  proof: BookProof,
  most: number = mostMediaOfMail,
): readonly string[] => {
  const said = mediaRecords(records);
  let room = most;
  return [...homesOf(proof, said.keys()).keys()].filter((digest) => {
    const { bytes = Number.POSITIVE_INFINITY } = said.get(digest) ?? {};
    if (bytes > room) return false;
    room -= bytes;
    return true;
  });
};
