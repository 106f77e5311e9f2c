import {
  type BoxPicture,
  type EndName,
  endKey,
  isSeen,
  type PicturePoint,
  type Side,
} from '../../../joins/index.ts';
import type { RecordDraft } from '../../commands/add-record.ts';
import { lastPerson } from '../../proof/person.ts';
import { isAttached } from '../../state/is-attached.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { keptFields } from '../../state/kept-texts.ts';
import type { Page } from '../../state/page.ts';

/** A code that somebody placed, moved or took off, and has not written down yet. */
export interface Move extends EndName {
  readonly picture: string;
  /** Absent: taken off. */
  readonly point?: PicturePoint;
  /** Records of the end that the person had before them: who places at the same moment follows none of it. */
  readonly follows: readonly string[];
}

/** What somebody is about to say of the photographs of a box. */
export interface PlacementDraft {
  readonly moves: readonly Move[];
  /** Photographs that were taken and are in no record yet. */
  readonly attached: readonly AttachedMedia[];
  readonly by: string;
}

export interface PlacementOf {
  readonly book: string;
  readonly box: string;
}

const noteOf = ({ book, box }: PlacementOf): string => `join-places/${book}/${box}`;

const isShare = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= 1;

const moveIn = (kept: unknown): readonly Move[] => {
  const { picture, join, side, point, follows } = keptFields(kept);
  const { x, y } = keptFields(point);
  if (typeof picture !== 'string' || typeof join !== 'string' || (side !== 'from' && side !== 'to'))
    return [];
  const place = isShare(x) && isShare(y) ? { point: { x, y } } : {};
  const known = Array.isArray(follows) ? follows.filter((one) => typeof one === 'string') : [];
  return [{ picture, join, side: side as Side, ...place, follows: known }];
};

type Notes = Pick<Page, 'notes'>;

/** What stood on the photographs when the page was left: a reload loses no tap. */
export const keptPlacements = (page: Notes, of: PlacementOf): PlacementDraft => {
  const { moves, attached, by } = keptFields(page.notes.read(noteOf(of)));
  return {
    moves: Array.isArray(moves) ? moves.flatMap(moveIn) : [],
    attached: Array.isArray(attached) ? attached.filter(isAttached) : [],
    by: typeof by === 'string' ? by : lastPerson(page),
  };
};

export const keepPlacements = (page: Notes, of: PlacementOf, draft: PlacementDraft): void =>
  page.notes.write(noteOf(of), draft);

export const forgetPlacements = (page: Notes, of: PlacementOf): void =>
  page.notes.write(noteOf(of), undefined);

/** The draft with one end somewhere else, or off the photograph where no point is given. */
export const withMove = (
  draft: PlacementDraft,
  { join, side }: EndName,
  picture: string,
  point: PicturePoint | undefined,
  pictures: readonly BoxPicture[],
): PlacementDraft => {
  const key = endKey({ join, side });
  const others = draft.moves.filter((one) => one.picture !== picture || endKey(one) !== key);
  const before = pictures
    .find((one) => one.picture === picture)
    ?.ends.find((end) => endKey(end) === key)
    ?.last.map(({ id }) => id);
  // a slip that nobody has written down leaves nothing behind
  if (point === undefined && before === undefined) return { ...draft, moves: others };
  const place = point === undefined ? {} : { point };
  return { ...draft, moves: [...others, { picture, join, side, ...place, follows: before ?? [] }] };
};

/** The draft with other photographs that are in no record yet; what lay on one that was left out goes with it. */
export const withAttached = (draft: PlacementDraft, attached: readonly AttachedMedia[]): PlacementDraft => {
  const left = new Set(attached.map(({ sha256 }) => sha256));
  const out = new Set(draft.attached.map(({ sha256 }) => sha256).filter((one) => !left.has(one)));
  return { ...draft, attached, moves: draft.moves.filter(({ picture }) => !out.has(picture)) };
};

/** An end on a photograph as it stands with what is not written down yet. */
export interface PlacedNow extends EndName {
  readonly point: PicturePoint;
  readonly conflict: boolean;
}

/** The ends that lie on a photograph now, by their key. */
export const placedNow = (
  picture: string,
  pictures: readonly BoxPicture[],
  { moves }: PlacementDraft,
): ReadonlyMap<string, PlacedNow> => {
  const recorded = pictures.find((one) => one.picture === picture)?.ends ?? [];
  const placed = new Map<string, PlacedNow>(recorded.filter(isSeen).map((end) => [endKey(end), end]));
  for (const { picture: on, join, side, point } of moves) {
    if (on !== picture) continue;
    if (point === undefined) placed.delete(endKey({ join, side }));
    else placed.set(endKey({ join, side }), { join, side, point, conflict: false });
  }
  return placed;
};

/** The records of what was placed: one for each photograph. */
export const placementRecords = (
  page: Pick<Page, 'newId' | 'now'>,
  { moves, by }: PlacementDraft,
  { box, floor }: { readonly box: string; readonly floor: string | undefined },
): readonly RecordDraft[] =>
  [...new Set(moves.map(({ picture }) => picture))].map((picture) => {
    const own = moves.filter((one) => one.picture === picture);
    const off = own.filter(({ point }) => point === undefined);
    return {
      id: page.newId(),
      kind: 'placement',
      version: 1,
      at: page.now(),
      body: {
        picture,
        box,
        points: own.flatMap(({ join, side, point }) =>
          point === undefined ? [] : [{ join, side, ...point }],
        ),
        ...(off.length === 0 ? {} : { off: off.map(({ join, side }) => ({ join, side })) }),
        follows: [...new Set(own.flatMap((one) => one.follows))],
        by: by.trim(),
        ...(floor === undefined ? {} : { floor }),
      },
    };
  });
