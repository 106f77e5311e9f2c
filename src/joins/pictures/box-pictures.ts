import { currentRecords } from '../../record/current-records.ts';
import type { Envelope } from '../../record/envelope.ts';
import { byText } from '../../record/heads.ts';
import { byMoment, type Statement, unfollowed } from '../unfollowed.ts';
import { type EndName, endKey } from './box-ends.ts';

/** A place on a photograph, as shares of its width and height from the upper left. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

/** What one record says of one end on one photograph. */
export interface EndPlacement extends Statement {
  readonly by: string;
  /** Absent: its code was taken off. */
  readonly point?: PicturePoint;
}

/** An end on a photograph, as its records have it. */
export interface PictureEnd extends EndName {
  /** The latest place; absent: the latest took its code off. */
  readonly point?: PicturePoint;
  /** Placements that nothing follows; the next one names them. */
  readonly last: readonly EndPlacement[];
  /** Placed apart by two who mean different places: people decide, by a placement that follows both. */
  readonly conflict: boolean;
}

/** A photograph of a box with the ends that are seen on it. */
export interface BoxPicture {
  readonly picture: string;
  readonly box: string;
  /** When it was first spoken of. */
  readonly at: string;
  readonly ends: readonly PictureEnd[];
}

/** Shares nearer than this mean one terminal: a strip of fifty across the whole picture has them twice as far apart. */
const sameTerminal = 0.01;

interface PlacementBody {
  readonly picture: string;
  readonly box: string;
  readonly points: readonly (EndName & PicturePoint)[];
  readonly off?: readonly EndName[];
  readonly follows?: readonly string[];
  readonly by: string;
}

interface MediaBody {
  readonly sha256: string;
  readonly mediaType: string;
  readonly of?: readonly string[];
}

const farApart = (one: PicturePoint | undefined, other: PicturePoint | undefined): boolean =>
  one === undefined || other === undefined
    ? one !== other
    : Math.abs(one.x - other.x) > sameTerminal || Math.abs(one.y - other.y) > sameTerminal;

/** The end by what is said of it. */
const endOf = (name: EndName, said: readonly EndPlacement[]): PictureEnd => {
  const last = unfollowed(said.toSorted(byMoment));
  const point = last.at(-1)?.point;
  const conflict = last.some((one) => farApart(one.point, point));
  return { ...name, last, conflict, ...(point === undefined ? {} : { point }) };
};

interface Growing {
  readonly picture: string;
  readonly box: string;
  at: string;
  readonly ends: Map<string, { readonly name: EndName; readonly said: EndPlacement[] }>;
}

/**
 * The photographs of each box with the codes that lie on them.
 *
 * Method   of each end on each photograph the latest placement holds; two that follow none of each other and mean
 *          different places are a conflict, which stands until one follows both
 * Symbols  records  the set, whole by verifyRecords: what was said of media with the tag of the box, and placements
 * Returns  by box, in the order in which they were first spoken of; the order of the records leaves no trace
 * Assumes  bodies that fit their kind; a version of the future is passed over
 * Cost     O(n log n)
 */
export const boxPictures = (records: readonly Envelope[]): ReadonlyMap<string, readonly BoxPicture[]> => {
  const growing = new Map<string, Growing>();
  const pictureOf = (box: string, picture: string, at: string): Growing => {
    const key = `${picture} ${box}`;
    const known = growing.get(key) ?? { picture, box, at, ends: new Map() };
    if (Date.parse(at) < Date.parse(known.at)) known.at = at;
    growing.set(key, known);
    return known;
  };
  for (const { kind, version, id, deviceTime: at, body } of currentRecords(records).current) {
    if (version !== 1) continue;
    if (kind === 'media') {
      const { sha256, mediaType, of = [] } = body as MediaBody;
      if (mediaType.startsWith('image/')) for (const tag of of) pictureOf(tag, sha256, at);
    }
    if (kind !== 'placement') continue;
    const { picture, box, points, off = [], follows, by } = body as PlacementBody;
    const { ends } = pictureOf(box, picture, at);
    const said = { id, at, by, ...(follows === undefined ? {} : { follows }) };
    const say = ({ join, side }: EndName, placement: EndPlacement): void => {
      const name = { join, side };
      const end = ends.get(endKey(name)) ?? { name, said: [] };
      end.said.push(placement);
      ends.set(endKey(name), end);
    };
    for (const { x, y, ...name } of points) say(name, { ...said, point: { x, y } });
    for (const name of off) say(name, said);
  }
  const boxes = new Map<string, BoxPicture[]>();
  const all = [...growing.values()].sort(
    (a, b) => byText(a.box, b.box) || Date.parse(a.at) - Date.parse(b.at) || byText(a.picture, b.picture),
  );
  for (const { picture, box, at, ends } of all) {
    const placed = [...ends.values()]
      .sort((a, b) => byText(endKey(a.name), endKey(b.name)))
      .map(({ name, said }) => endOf(name, said));
    const one = { picture, box, at: new Date(at).toISOString(), ends: placed };
    const known = boxes.get(box);
    if (known === undefined) boxes.set(box, [one]);
    else known.push(one);
  }
  return boxes;
};
