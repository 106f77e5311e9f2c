import { type BoxEnd, endKey } from './box-ends.ts';
import type { BoxPicture, PictureEnd, PicturePoint } from './box-pictures.ts';

/** An end whose code lies on a photograph. */
export type SeenEnd = PictureEnd & { readonly point: PicturePoint };

export const isSeen = (end: PictureEnd): end is SeenEnd => end.point !== undefined;

/** Where an end is seen. */
export interface EndSeen {
  readonly picture: BoxPicture;
  readonly end: SeenEnd;
}

/** The photographs on which each end is seen, by the key of the end. */
export const seenEnds = (
  boxes: ReadonlyMap<string, readonly BoxPicture[]>,
): ReadonlyMap<string, readonly EndSeen[]> => {
  const seen = new Map<string, EndSeen[]>();
  for (const picture of [...boxes.values()].flat()) {
    for (const end of picture.ends.filter(isSeen)) {
      const known = seen.get(endKey(end));
      if (known === undefined) seen.set(endKey(end), [{ picture, end }]);
      else known.push({ picture, end });
    }
  }
  return seen;
};

/** The ends of a box that lie on none of its photographs. */
export const unplacedEnds = (ends: readonly BoxEnd[], pictures: readonly BoxPicture[]): readonly BoxEnd[] => {
  const placed = new Set(pictures.flatMap((one) => one.ends.filter(isSeen).map(endKey)));
  return ends.filter((end) => !placed.has(endKey(end)));
};
