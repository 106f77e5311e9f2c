import type { Book } from '../../book/index.ts';
import type { PaperKind } from '../../book/paper-kinds.ts';
import { boxPictures, endsOfBoxes, laidJoins } from '../../joins/index.ts';
import type { Envelope } from '../../record/envelope.ts';

/** Papers on which photographs stand. */
const withPictures: ReadonlySet<PaperKind> = new Set(['schedule', 'dossier']);

/** Bytes of all photographs together that a paper carries: what is more can neither be mailed nor printed well. */
export const mostPictureBytes = 60_000_000;

/** Digests of the photographs that a paper shows: of boxes in which something is joined. */
export const wantedPictures = (
  paper: PaperKind,
  book: Book,
  records: readonly Envelope[],
): readonly string[] => {
  if (!withPictures.has(paper)) return [];
  const joins = laidJoins(book);
  const boxes = new Set([...endsOfBoxes(joins).keys(), ...joins.flatMap(({ box }) => box ?? [])]);
  return [
    ...new Set(
      [...boxPictures(records)]
        .filter(([box]) => boxes.has(box))
        .flatMap(([, pictures]) => pictures.map(({ picture }) => picture)),
    ),
  ];
};

/**
 * The bytes of photographs, as many as a paper carries.
 *
 * Symbols  read  gives the bytes of a digest; nothing where they are not at hand
 */
export const takenPictures = async (
  wanted: readonly string[],
  read: (digest: string) => Promise<Uint8Array | undefined>,
): Promise<ReadonlyMap<string, Uint8Array>> => {
  const taken = new Map<string, Uint8Array>();
  let left = mostPictureBytes;
  for (const digest of wanted) {
    const bytes = await read(digest);
    if (bytes === undefined || bytes.length > left) continue;
    left -= bytes.length;
    taken.set(digest, bytes);
  }
  return taken;
};
