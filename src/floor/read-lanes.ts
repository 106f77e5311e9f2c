import type { FillStation, Floor, Format } from '../book/index.ts';
import type { Lane } from '../hydraulics/system.ts';
import type { BookReader } from './book-reader.ts';

export interface FloorLane extends Lane {
  /** Book place of the lane. */
  readonly path: string;
  /** Where its preset stands; absent where it has to be worked out. */
  readonly presetPath?: string;
  /** m; absent where it is not known */
  readonly nozzleBore?: number;
  readonly bottomUp: boolean;
}

export interface FloorLanes {
  readonly lanes: readonly FloorLane[];
  /** Tags of lanes that can't be computed. */
  readonly incomplete: readonly string[];
  /** Height of the manifold above the datum, m. */
  readonly manifold: number;
}

/** Taken where a book is silent; common practice, and marked as assumed wherever it was used. */
const assumedMouth = 1.2;
const assumedDelay = 0.05;
const assumedClosing = 0.12;

/** Height of the liquid in the bottle against its volume: straight between the points, and above the last one flat. */
const levelCurve = (
  points: readonly { readonly height: number; readonly volume: number }[],
): ((volume: number) => number) => {
  const sorted = [{ height: 0, volume: 0 }, ...points].sort((a, b) => a.volume - b.volume);
  return (volume) => {
    let i = 1;
    while (i < sorted.length - 1 && sorted[i]!.volume < volume) i++;
    const low = sorted[i - 1]!;
    const high = sorted[i]!;
    if (volume >= high.volume) return high.height;
    const span = high.volume - low.volume;
    return span > 0 ? low.height + ((volume - low.volume) / span) * (high.height - low.height) : high.height;
  };
};

const readProfile = (
  reader: BookReader,
  format: Format | undefined,
  formatPath: string,
): ((volume: number) => number) | undefined => {
  const points = (format?.profile ?? []).flatMap((_, i) => {
    const height = reader.needed(`${formatPath}/profile/${i}/height`, 'length');
    const volume = reader.needed(`${formatPath}/profile/${i}/volume`, 'volume');
    return height === undefined || volume === undefined ? [] : [{ height, volume }];
  });
  if (points.length > 0) return levelCurve(points);
  const height = reader.number(`${formatPath}/height`, 'length');
  const brimful = reader.number(`${formatPath}/brimful`, 'volume');
  if (height === undefined || brimful === undefined) {
    reader.miss(`${formatPath}/profile`);
    return undefined;
  }
  // without a profile the bottle counts as a cylinder
  reader.assume(`${formatPath}/profile`);
  return levelCurve([{ height, volume: brimful }]);
};

/** Where the counts of a lane stand: this floor's own, the format's, the lane's. */
const settingPath = (
  floor: Floor,
  floorPath: string,
  lane: NonNullable<FillStation['lanes']>[number],
  lanePath: string,
  format: string,
  field: 'preset' | 'changeOver',
): { readonly path: string; readonly count: number } | undefined => {
  const settings = floor.settings ?? [];
  // what is set for this format goes before what is set for all
  const here = [format, undefined]
    .map((of) => settings.findIndex((s) => s.lane === lane.tag && s.format === of && s[field] !== undefined))
    .find((index) => index >= 0);
  if (here !== undefined) {
    return { path: `${floorPath}/settings/${here}/${field}`, count: settings[here]![field]! };
  }
  const presets = lane.presets ?? [];
  const own = presets.findIndex((p) => p.format === format && p[field] !== undefined);
  if (own >= 0) return { path: `${lanePath}/presets/${own}/${field}`, count: presets[own]![field]! };
  const count = lane[field];
  return count === undefined ? undefined : { path: `${lanePath}/${field}`, count };
};

/**
 * The lanes of the fill station as set on one floor for one format.
 *
 * Returns  lanes that can be computed; a lane without preset gets 0 counts here, its preset is worked out later
 * Assumes  lane heights are measured from the floor under the line, which stands `standsAt` above the datum
 */
export const readLanes = (
  reader: BookReader,
  floor: Floor,
  floorPath: string,
  station: FillStation,
  stationPath: string,
  format: Format | undefined,
  formatPath: string,
): FloorLanes => {
  const slab = reader.number(`${floorPath}/standsAt`, 'length') ?? 0;
  const mouth = slab + reader.numberOr(`${stationPath}/mouthHeight`, 'length', assumedMouth);
  const ownManifold = reader.number(`${stationPath}/manifoldHeight`, 'length');
  if (ownManifold === undefined) reader.assume(`${stationPath}/manifoldHeight`);
  const manifold = ownManifold === undefined ? mouth : slab + ownManifold;
  const bottleHeight = reader.number(`${formatPath}/height`, 'length');
  let level: ((volume: number) => number) | undefined;

  const lanes: FloorLane[] = [];
  const incomplete: string[] = [];
  for (const [i, lane] of (station.lanes ?? []).entries()) {
    if (lane.out === true) continue;
    const path = `${stationPath}/lanes/${i}`;
    const kv = reader.needed(`${path}/kv`, 'flowCoefficient');
    const pulses = reader.needed(`${path}/pulses`, 'pulseDensity');
    const preset = settingPath(floor, floorPath, lane, path, format?.tag ?? '', 'preset');
    const changeOver = settingPath(floor, floorPath, lane, path, format?.tag ?? '', 'changeOver');
    const kvSlow = reader.number(`${path}/kvSlow`, 'flowCoefficient');
    const bottomUp = lane.nozzle === 'bottom up';
    if (kv === undefined || pulses === undefined) {
      incomplete.push(lane.tag);
      continue;
    }
    const delay = reader.numberOr(`${path}/delay`, 'time', assumedDelay);
    const closing = reader.numberOr(`${path}/closing`, 'time', assumedClosing);
    const afterDrip = reader.number(`${path}/afterDrip`, 'volume') ?? 0;
    const nozzleBore = reader.number(`${path}/nozzleBore`, 'length');
    const reset = lane.meter?.phase === 'reset';
    let outlet = mouth;
    let levelAt: ((volume: number) => number) | undefined;
    if (bottomUp) {
      level ??= readProfile(reader, format, formatPath);
      if (level === undefined || bottleHeight === undefined) {
        if (bottleHeight === undefined) reader.miss(`${formatPath}/height`);
        incomplete.push(lane.tag);
        continue;
      }
      const bottom = mouth - bottleHeight;
      const curve = level;
      outlet = bottom + (reader.number(`${path}/nozzleHeight`, 'length') ?? 0);
      levelAt = (volume) => bottom + curve(volume);
    }
    lanes.push({
      tag: lane.tag,
      path,
      kv,
      kvSlow: kvSlow ?? kv,
      pulses,
      preset: preset?.count ?? 0,
      changeOver: kvSlow === undefined ? Number.POSITIVE_INFINITY : (changeOver?.count ?? 0),
      delay,
      closing,
      afterDrip,
      phase: reset ? 0 : 0.5 / pulses,
      outlet,
      bottomUp,
      ...(preset === undefined ? {} : { presetPath: preset.path }),
      ...(nozzleBore === undefined ? {} : { nozzleBore }),
      ...(levelAt === undefined ? {} : { levelAt }),
    });
  }
  return { lanes, incomplete, manifold };
};
