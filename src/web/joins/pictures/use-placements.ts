import { type KeyboardEvent, useMemo, useState } from 'react';
import { type BoxEnd, type BoxPicture, endKey, type PicturePoint } from '../../../joins/index.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { movedBy } from './moved-by.ts';
import {
  forgetPlacements,
  keepPlacements,
  keptPlacements,
  type PlacedNow,
  type PlacementDraft,
  placedNow,
  withAttached,
  withMove,
} from './placement-draft.ts';

const noEnds: readonly BoxEnd[] = [];
const noPictures: readonly BoxPicture[] = [];

export interface Placements {
  readonly draft: PlacementDraft;
  readonly sign: (by: string) => void;
  readonly attach: (attached: readonly AttachedMedia[]) => void;
  /** It is written down: the next begins anew. */
  readonly forget: () => void;
  /** Photographs of the box, those too that are in no record yet or were taken of something in it. */
  readonly pictures: readonly string[];
  /** The one that is looked at; absent: there is none. */
  readonly picture: string | undefined;
  readonly show: (picture: string) => void;
  /** Photographs that were taken of joins whose ends lie in the box, and are none of the box yet. */
  readonly near: readonly string[];
  /** Ends that lie in the box. */
  readonly ends: readonly BoxEnd[];
  /** Those that lie on no photograph. */
  readonly left: readonly BoxEnd[];
  /** What lies on the photograph that is looked at, by the key of its end. */
  readonly here: ReadonlyMap<string, PlacedNow>;
  /** The end that the next tap places. */
  readonly chosen: BoxEnd | undefined;
  readonly choose: (key: string) => void;
  readonly tap: (point: PicturePoint) => void;
  readonly takeOff: (end: BoxEnd) => void;
  readonly press: (event: KeyboardEvent, key: string) => void;
}

/** Codes as they are placed on the photographs of a box; what is not written down yet is kept by this browser. */
export const usePlacements = (box: string): Placements => {
  const page = usePage();
  const of = { book: usePagePart((one) => one.id), box };
  const joins = useJoins();
  const ends = joins.ends.get(box) ?? noEnds;
  const recorded = joins.pictures.get(box) ?? noPictures;
  const [draft, setDraft] = useState(() => keptPlacements(page, of));
  const [shown, show] = useState<string>();
  const [named, setNamed] = useState<string>();
  const placed = useMemo(() => {
    const digests = new Set([
      ...recorded.map(({ picture }) => picture),
      ...draft.moves.map(({ picture }) => picture),
      ...(shown === undefined ? [] : [shown]),
      // a film of the box is kept too, and no code lies on it
      ...draft.attached.filter(({ mediaType }) => mediaType.startsWith('image/')).map(({ sha256 }) => sha256),
    ]);
    return new Map([...digests].map((one) => [one, placedNow(one, recorded, draft)]));
  }, [recorded, draft, shown]);
  const near = useMemo(() => {
    const of = ends.flatMap(({ join }) => joins.pictures.get(join) ?? []);
    return [...new Set(of.map(({ picture }) => picture))].filter((one) => !placed.has(one));
  }, [ends, joins.pictures, placed]);
  const left = useMemo(() => {
    const on = new Set([...placed.values()].flatMap((one) => [...one.keys()]));
    return ends.filter((end) => !on.has(endKey(end)));
  }, [ends, placed]);
  const pictures = [...placed.keys()];
  const picture = pictures.find((one) => one === shown) ?? pictures.at(-1);
  const here = (picture === undefined ? undefined : placed.get(picture)) ?? new Map<string, PlacedNow>();
  // the next that lies on no photograph is offered, so that a row of terminals is a row of taps
  const chosen = ends.find((end) => endKey(end) === named) ?? left[0];
  const change = (next: PlacementDraft): void => {
    setDraft(next);
    keepPlacements(page, of, next);
  };
  const move = (end: BoxEnd, point: PicturePoint | undefined): void => {
    if (picture !== undefined) change(withMove(draft, end, picture, point, recorded));
  };
  return {
    draft,
    sign: (by) => change({ ...draft, by }),
    attach: (attached) => {
      const left = new Set(attached.map(({ sha256 }) => sha256));
      // one that was left out is looked at no more
      if (draft.attached.some(({ sha256 }) => sha256 === shown && !left.has(sha256))) show(undefined);
      change(withAttached(draft, attached));
    },
    forget: () => {
      forgetPlacements(page, of);
      setDraft(keptPlacements(page, of));
    },
    pictures,
    picture,
    show,
    near,
    ends,
    left,
    here,
    chosen,
    choose: setNamed,
    tap: (point) => {
      if (chosen === undefined) return;
      setNamed(undefined);
      move(chosen, point);
    },
    takeOff: (end) => move(end, undefined),
    press: (event, key) => {
      const end = ends.find((one) => endKey(one) === key);
      const point = movedBy(event, here.get(key)?.point);
      if (end === undefined || point === 'elsewhere') return;
      event.preventDefault();
      move(end, point);
    },
  };
};
