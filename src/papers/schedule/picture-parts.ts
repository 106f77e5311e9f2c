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

/** The photographs whose bytes are at hand, by their digest. */
export interface PicturesAtHand {
  readonly shown: ReadonlyMap<string, ShownPicture>;
  /** Those that no paper can carry, by the type of their file; empty where it is none that is known. */
  readonly unprintable: ReadonlyMap<string, string>;
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
  /** What is said in the empty frames: one for each photograph that cannot stand there, or for the one that is missing. */
  readonly frames: readonly string[];
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
  { shown: pictures, unprintable }: PicturesAtHand,
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
  /** In place of a photograph that cannot stand there: what it is, and how one comes to see it. */
  const frameOf = ({ box, picture: { picture } }: Found): string => {
    const type = unprintable.get(picture);
    return type === undefined || type === ''
      ? say('schedule.picture.gone', { box: boxText(box), digest: picture })
      : say('schedule.picture.unprintable', {
          box: boxText(box),
          digest: picture,
          form: type.slice(type.indexOf('/') + 1).toUpperCase(),
        });
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
    if (box === undefined || !first) return { shown: [...here, ...far], frames: [] };
    const frames = own.filter(({ picture }) => !pictures.has(picture.picture)).map(frameOf);
    if (own.length === 0) frames.push(say('schedule.picture.none', { box: boxText(box) }));
    // where nobody has placed an end of it here, the photograph alone still tells where one is
    return { shown: [...(here.length > 0 ? here : laidOf(own)), ...far], frames };
  };
};
