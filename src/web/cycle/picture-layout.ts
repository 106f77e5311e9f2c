import type { Book } from '../../book/index.ts';
import type { BottleGroup, LineMoment, ShiftLine } from '../../line/shift/index.ts';
import { stationsInFlow } from '../line/line-layout.ts';

/** One box of the picture: a station, or one zone of the washer. */
export interface PictureBox {
  readonly tag: string;
  readonly station: string;
  readonly kind: 'load' | 'zone' | 'washer' | 'way' | 'fill' | 'closing' | 'take-off';
  readonly x: number;
  readonly width: number;
  /** Columns of bottles that stand side by side in it. */
  readonly columns: number;
}

export interface Picture {
  readonly boxes: readonly PictureBox[];
  readonly width: number;
  /** Bottles of a column. */
  readonly deep: number;
}

/** One bottle as it is drawn. */
export interface DrawnBottle {
  readonly key: string;
  readonly x: number;
  /** Place across the line, 0 first. */
  readonly lane: number;
  /** Share that is filled. */
  readonly filled: number;
  readonly capped: boolean;
}

export const columnWidth = 17;
const gap = 4;
/** px; the name and what is done stand under it */
const leastBox = 66;

/** A queue that has more room is drawn as long as the eye counts at once. */
const mostColumns = 5;

const columnsFor = (room: number, deep: number, usual: number): number =>
  Number.isFinite(room) ? Math.min(mostColumns, Math.max(1, Math.ceil(room / deep))) : usual;

/** Boxes of the line in flow order, seen from above; wider than asked where bottles and names need it. */
export const pictureOf = (book: Book, line: ShiftLine, wanted: number): Picture => {
  const deep = Math.max(line.washer?.row ?? 1, line.fill?.lanes ?? 1);
  const boxes: Omit<PictureBox, 'x' | 'width'>[] = [];
  const add = (box: Omit<PictureBox, 'x' | 'width'>): void => void boxes.push(box);
  for (const { tag, kind } of stationsInFlow(book.line?.stations ?? [])) {
    const box = { tag, station: tag };
    if (kind === 'load') add({ ...box, kind, columns: columnsFor(line.load?.room ?? 2 * deep, deep, 2) });
    else if (kind === 'washer') {
      const zones = line.washer?.zones ?? [];
      for (const zone of zones) add({ tag: zone.zone, station: tag, kind: 'zone', columns: zone.rows });
      if (zones.length === 0) add({ ...box, kind, columns: Math.max(1, line.washer?.rows ?? 1) });
    } else if (kind === 'discharge' || kind === 'conveyor') {
      add({ ...box, kind: 'way', columns: kind === 'discharge' ? 1 : columnsFor(line.wayRoom, deep, 3) });
    } else if (kind === 'fill') add({ ...box, kind, columns: 1 });
    else if (kind === 'closing') {
      add({ ...box, kind, columns: columnsFor(line.closing?.room ?? 2 * deep, deep, 2) });
    } else add({ ...box, kind: 'take-off', columns: columnsFor(line.takeOff?.room ?? 3 * deep, deep, 3) });
  }
  const least = boxes.map(({ columns }) => Math.max(leastBox, columns * columnWidth + 14));
  const needed = least.reduce((sum, one) => sum + one + gap, 0);
  const spare = Math.max(0, wanted - needed) / Math.max(1, boxes.length);
  let x = 1;
  const placed = boxes.map((box, i) => {
    const width = least[i]! + spare;
    const at = { ...box, x, width };
    x += width + gap;
    return at;
  });
  return { boxes: placed, width: Math.max(wanted, needed), deep };
};

/** Middle of a column of a box, counted from where bottles come in. */
const columnAt = ({ x, width, columns }: PictureBox, column: number): number =>
  x + (width * (Math.min(columns, Math.max(-1, column)) + 0.5)) / columns;

const between = (from: number, to: number, share: number): number => from + (to - from) * share;

/** Column of a group that stands and waits: the first that came stands furthest on. */
const queued = (box: PictureBox, ahead: number): number =>
  columnAt(box, Math.max(0, box.columns - 1 - ahead));

const isFull: ReadonlySet<string> = new Set(['lower', 'clearOut', 'cap', 'takeOff']);

/** Where each bottle is drawn at a moment. Without motion a step shows what it ends with. */
export const drawnBottles = (
  picture: Picture,
  { groups }: Pick<LineMoment, 'groups'>,
  moves: boolean,
): readonly DrawnBottle[] => {
  const { boxes } = picture;
  const box = (kind: PictureBox['kind']): PictureBox | undefined => boxes.find((one) => one.kind === kind);
  const columns = boxes
    .filter(({ kind }) => kind === 'zone' || kind === 'washer')
    .flatMap((zone) => Array.from({ length: zone.columns }, (_, i) => columnAt(zone, i)));
  const ways = boxes.filter(({ kind }) => kind === 'way');
  const [load, fill, closing, takeOff] = [box('load'), box('fill'), box('closing'), box('take-off')];
  const waiting = new Map<string, number>();
  /** How many groups stand before this one in the same queue. */
  const ahead = (queue: string): number => {
    const before = waiting.get(queue) ?? 0;
    waiting.set(queue, before + 1);
    return before;
  };
  const start = load === undefined ? -columnWidth : queued(load, 0);
  const placeOf = (group: BottleGroup): number | undefined => {
    const { kind, step, place } = group;
    const progress = moves ? group.progress : group.step === 'convey' || group.step === 'stroke' ? 1 : 0;
    if (kind === 'row') {
      if (place !== undefined) {
        const to = columns[Math.min(place, columns.length - 1)];
        if (to === undefined) return undefined;
        return step === 'stroke' ? between(columns[place - 1] ?? start, to, progress) : to;
      }
      const last = columns.at(-1) ?? start;
      const [first] = ways;
      const end = ways.at(-1);
      if (step === 'stroke' || step === 'setUp') {
        const to = first === undefined ? last : columnAt(first, 0);
        return step === 'stroke' ? between(last, to, progress) : to;
      }
      if (step === 'convey' && end !== undefined) {
        return between(columnAt(first ?? end, 0), columnAt(end, end.columns - 1), progress);
      }
      const inLoad =
        load !== undefined &&
        group.station === boxes.find(({ kind: k }) => k === 'zone' || k === 'washer')?.station;
      if (inLoad && load !== undefined) return queued(load, ahead('load'));
      return end === undefined ? last : queued(end, ahead('way'));
    }
    const way = ways.at(-1);
    if (fill !== undefined && group.station === fill.station) {
      const at = columnAt(fill, 0);
      if (step === undefined) return at;
      if (step === 'travelIn')
        return between(way === undefined ? fill.x : columnAt(way, way.columns - 1), at, progress);
      if (step === 'clearOut' && closing !== undefined) return between(at, columnAt(closing, 0), progress);
      return at;
    }
    if (closing !== undefined && group.station === closing.station) {
      return queued(closing, ahead('closing'));
    }
    if (takeOff !== undefined && group.station === takeOff.station) return queued(takeOff, ahead('take-off'));
    return undefined;
  };
  // the first that came is placed first, and stands furthest on
  const sorted = groups.toSorted((a, b) =>
    a.kind === b.kind ? a.number - b.number : a.kind === 'set' ? -1 : 1,
  );
  return sorted.flatMap((group) => {
    const x = placeOf(group);
    if (x === undefined) return [];
    const { kind, step, progress, number } = group;
    const pastFill =
      kind === 'set' && (fill === undefined || group.station !== fill.station || isFull.has(step ?? ''));
    const standsFull =
      kind === 'set' && step === undefined && group.progress === 0 && group.station === fill?.station;
    const filled = pastFill || standsFull ? 1 : kind === 'set' && step === 'fill' ? progress : 0;
    const capped = (lane: number): boolean =>
      kind === 'set' &&
      (group.station === takeOff?.station ||
        (group.station === closing?.station &&
          step === 'cap' &&
          lane < Math.floor(progress * group.bottles)));
    return Array.from({ length: group.bottles }, (_, lane) => ({
      key: `${kind} ${number} ${lane}`,
      x,
      lane,
      filled,
      capped: capped(lane),
    }));
  });
};
