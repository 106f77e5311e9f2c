import { type EnteredBottle, netOf } from './entered-bottle.ts';

/** A value of a bottle, with the bottle's count and its place among all. */
export interface Seen {
  readonly value: number;
  readonly preset: number;
  readonly place: number;
}

/** Values of one kind in the order of their bottles. */
export interface SeenValues {
  readonly all: readonly Seen[];
  readonly byPreset: ReadonlyMap<number, readonly Seen[]>;
}

/** The bottles with which one is compared, sorted once for all that are compared with them. */
export interface SeenBottles {
  readonly bottles: readonly EnteredBottle[];
  /** Net masses of bottles that did not run over, by lane. */
  readonly nets: ReadonlyMap<string, SeenValues>;
  /** Net masses of those that did: they hold what a bottle holds, whatever lane and count. */
  readonly full: readonly Seen[];
  /** By `timedAs`. */
  readonly times: ReadonlyMap<string, SeenValues>;
  readonly tares: readonly Seen[];
  /** How many were weighed, and how many of them with their own tare. */
  readonly weighed: number;
  readonly withTare: number;
}

export const overflows = ({ overflow }: EnteredBottle): boolean =>
  overflow === 'trace' || overflow === 'stream';

/** Times can be compared among bottles that were filled in the same way. */
export const timedAs = (
  lane: string,
  { lanesOpen, throttled = false, afterStop = false }: EnteredBottle,
): string => JSON.stringify([lane, lanesOpen, throttled, afterStop]);

interface Gathering {
  readonly all: Seen[];
  readonly byPreset: Map<number, Seen[]>;
}

const put = <K>(into: Map<K, Gathering>, key: K, seen: Seen): void => {
  const kind = into.get(key) ?? { all: [], byPreset: new Map<number, Seen[]>() };
  into.set(key, kind);
  kind.all.push(seen);
  const alike = kind.byPreset.get(seen.preset);
  if (alike === undefined) kind.byPreset.set(seen.preset, [seen]);
  else alike.push(seen);
};

export const seenBottles = (bottles: readonly EnteredBottle[]): SeenBottles => {
  const nets = new Map<string, Gathering>();
  const times = new Map<string, Gathering>();
  const full: Seen[] = [];
  const tares: Seen[] = [];
  let weighed = 0;
  let withTare = 0;
  bottles.forEach((bottle, place) => {
    const { lane, preset, gross, tare, time } = bottle;
    const net = netOf(bottle);
    if (net !== undefined) {
      if (overflows(bottle)) full.push({ value: net, preset, place });
      else if (net > 0 && preset > 0) put(nets, lane, { value: net, preset, place });
    }
    if (time !== undefined && time.value > 0 && preset > 0) {
      put(times, timedAs(lane, bottle), { value: time.value, preset, place });
    }
    if (tare !== undefined && tare.value > 0) tares.push({ value: tare.value, preset, place });
    if (gross !== undefined) {
      weighed++;
      if (tare !== undefined) withTare++;
    }
  });
  return { bottles, nets, full, times, tares, weighed, withTare };
};

/** How many of the values stand before a place. */
const before = (seen: readonly Seen[], place: number): number => {
  let low = 0;
  let high = seen.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (seen[middle]!.place < place) low = middle + 1;
    else high = middle;
  }
  return low;
};

/** The bottle that is compared: where it stands among the others, or would stand, and whether it is one of them. */
export interface Standing {
  readonly at: number;
  readonly among: boolean;
}

const isItself = (seen: Seen | undefined, { at, among }: Standing): boolean => among && seen?.place === at;

/** The values without the bottle's own. */
export const others = (seen: readonly Seen[], standing: Standing): readonly Seen[] => {
  const own = before(seen, standing.at);
  return isItself(seen[own], standing) ? seen.toSpliced(own, 1) : seen;
};

/** So many of the other bottles, nearest in order. */
export const nearest = (seen: readonly Seen[], standing: Standing, count: number): readonly Seen[] => {
  const own = before(seen, standing.at);
  const self = isItself(seen[own], standing);
  const from = Math.max(0, Math.min(own - count / 2, seen.length - (self ? 1 : 0) - count));
  const found = seen.slice(from, from + count + (self ? 1 : 0));
  return self ? found.toSpliced(own - from, 1) : found;
};
