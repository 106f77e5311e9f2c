import {
  type BoxPicture,
  codePlaces,
  endKey,
  isSeen,
  type KeyedPoint,
  type LaidJoin,
  type PictureEnd,
} from '../../joins/index.ts';
import type { PaperWords } from '../paper-words.ts';

/** A photograph that can stand on the paper. */
export interface ShownPicture {
  /** What the template finds it by. */
  readonly name: string;
  readonly heightByWidth: number;
}

/** A code on a photograph: where its end is and where it is written, shares of the photograph. */
interface LaidCode {
  readonly code: string;
  readonly at: readonly [number, number];
  readonly written: readonly [number, number];
}

/** A photograph as it stands on the paper; sizes in mm. */
export interface ScheduledPicture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly label: { readonly width: number; readonly height: number };
  readonly codes: readonly LaidCode[];
  readonly title: string;
  readonly alt: string;
  readonly conflict?: string;
}

export interface StopPictures {
  readonly shown: readonly ScheduledPicture[];
  /** What is said in an empty frame. */
  readonly frame?: string;
}

/** Room for a photograph beside the table, mm. */
const room = { width: 92, height: 64 } as const;
/** A code of seven characters in bold at 6.5 points, mm. */
const label = { width: 11.6, height: 3.4 } as const;

interface Found {
  readonly box: string;
  readonly picture: BoxPicture;
  readonly ends: readonly PictureEnd[];
}

/**
 * The photographs that show ends of the joins of a stop: of its own box first, then of the boxes at the far ends. At the
 * first stop of a box its photographs stand there without codes, or a frame for the one that is missing.
 */
export const pictureParts = (
  byBox: ReadonlyMap<string, readonly BoxPicture[]>,
  pictures: ReadonlyMap<string, ShownPicture>,
  codes: ReadonlyMap<string, string>,
  boxText: (box: string) => string,
  { say }: PaperWords,
): ((box: string | undefined, joins: readonly LaidJoin[], first: boolean) => StopPictures) => {
  const laid = ({ box, picture, ends }: Found): ScheduledPicture | undefined => {
    const shown = pictures.get(picture.picture);
    if (shown === undefined) return undefined;
    const width = Math.min(room.width, room.height / shown.heightByWidth);
    const height = width * shown.heightByWidth;
    const points = ends
      .filter(isSeen)
      .map((end): KeyedPoint & { join: string } => ({ ...end.point, key: endKey(end), join: end.join }));
    const places = codePlaces(points, { width, height }, label);
    const own = byBox.get(box) ?? [];
    const named = points.map(({ join }) => codes.get(join) ?? join);
    const differing = ends.filter(({ conflict }) => conflict).map(({ join }) => codes.get(join) ?? join);
    return {
      name: shown.name,
      width,
      height,
      label,
      codes: points.map(({ key, x, y }, i) => {
        const written = places.get(key) ?? { x, y };
        return { code: named[i] ?? '', at: [x, y], written: [written.x, written.y] };
      }),
      title: say('schedule.picture', {
        box: boxText(box),
        n: own.indexOf(picture) + 1,
        of: own.length,
      }),
      alt: say('schedule.picture.alt', { box: boxText(box), codes: named.join(', ') }),
      ...(differing.length === 0
        ? {}
        : { conflict: say('schedule.picture.conflict', { codes: differing.join(', ') }) }),
    };
  };
  return (box, joins, first) => {
    const tags = new Set(joins.map(({ tag }) => tag));
    const near = new Set([
      ...(box === undefined ? [] : [box]),
      ...joins.flatMap(({ to, from }) => [to.box, from.box].filter((one) => one !== undefined)),
    ]);
    const found = [...near].flatMap((one) =>
      (byBox.get(one) ?? []).map((picture): Found => {
        const ends = picture.ends.filter((end) => tags.has(end.join) && (isSeen(end) || end.conflict));
        return { box: one, picture, ends };
      }),
    );
    const own = found.filter((one) => one.box === box);
    const laidOf = (some: readonly Found[]): readonly ScheduledPicture[] =>
      some.flatMap((one) => laid(one) ?? []);
    const [here, far] = [own, found.filter((one) => one.box !== box)].map((some) =>
      laidOf(some.filter(({ ends }) => ends.length > 0)),
    ) as [readonly ScheduledPicture[], readonly ScheduledPicture[]];
    if (box === undefined || here.length > 0 || !first) return { shown: [...here, ...far] };
    // nobody has placed an end of it here: the photograph alone still tells where one is
    const plain = laidOf(own);
    if (plain.length > 0) return { shown: [...plain, ...far] };
    const frame = say(own.length > 0 ? 'schedule.picture.gone' : 'schedule.picture.none', {
      box: boxText(box),
    });
    return { shown: far, frame };
  };
};
