import type { Book } from '../../../book/index.ts';
import { flowLeftSheet } from '../../../sheets/water/flow-left.ts';
import { tankDumpSheet } from '../../../sheets/water/tank-dump.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import { type ZoneAt, zonesOf } from '../heat/zones-of.ts';
import type { Known } from '../known.ts';
import { flowOfAll } from '../water/flow-of-all.ts';
import { type TieInAt, tieInsOf } from '../water/water-draw.ts';

/** Zones that let go into a drain; the first drain takes those that name none. */
export const zonesDraining = (book: Book, { tieIn }: TieInAt): readonly ZoneAt[] => {
  const first = tieInsOf(book, 'drain')[0]?.tieIn.tag;
  return zonesOf(book).filter(({ zone }) => (zone.drain ?? first) === tieIn.tag);
};

/** Flow of one zone into the drain: what comes in and does not run on into another zone. */
export const zoneOverflow = (c: Calculation, { path, zone }: ZoneAt): Known | undefined => {
  const into = c.number(`${path}/flow`, 'volumeFlow');
  if (into === undefined) return undefined;
  const on = zonesOf(c.book)
    .filter((each) => each.zone.from === zone.tag)
    .map((each) => c.needed(`${each.path}/flow`, 'volumeFlow'));
  return on.length === 0 ? into : c.run(flowLeftSheet, { comesIn: into, runsOn: on })?.left;
};

/** Flow into a drain while the line runs. */
export const runningFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`runningFlow ${at.path}`, (c) => {
    const flows = zonesDraining(c.book, at)
      .filter(({ zone }) => zone.flow !== undefined)
      .map((zone) => zoneOverflow(c, zone));
    if (flows.length === 0) return c.needed(`${at.path}/flow`, 'volumeFlow');
    const tempering = c.number(`${c.floorPath}/drains/tempering`, 'volumeFlow');
    return flowOfAll(c, tempering === undefined ? flows : [...flows, tempering]);
  });

/** Baths that are let go into a drain. */
export const bathsDumped = (book: Book, at: TieInAt): readonly ZoneAt[] =>
  zonesDraining(book, at).filter(
    ({ zone }) => zone.tank !== undefined && zone.outlet !== undefined && zone.collected !== true,
  );

/** One bath let go while something runs besides; the drain itself is looked at apart. */
const dumpOf = (c: Calculation, at: TieInAt, { path }: ZoneAt, running: Known | undefined) => {
  const outlet = c.needed(`${path}/outlet`, 'length');
  const every = c.number(`${path}/dumpEvery`, 'time');
  if (every === undefined) c.assume(`${path}/dumpEvery`);
  return c.run(tankDumpSheet, {
    volume: c.needed(`${path}/tank`, 'volume'),
    depth: c.needed(`${path}/depth`, 'length'),
    outlet,
    running,
    ...(every === undefined ? {} : { betweenDumps: every }),
    drainBore: c.number(drainPath(c, at, 'bore'), 'length') ?? outlet,
  });
};

/** Each bath let go on its own, with everything else running on. */
const dumps = (c: Calculation, at: TieInAt) =>
  c.once(`dumps ${at.path}`, (c) =>
    bathsDumped(c.book, at).map((bath) => dumpOf(c, at, bath, runningFlow(c, at))),
  );

/** Most that the line lets go at once: the largest bath with what runs besides. */
export const peakFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`peakFlow ${at.path}`, (c) => {
    const peaks = dumps(c, at).map((dump) => dump?.peak);
    if (peaks.length === 0) return runningFlow(c, at);
    return peaks.includes(undefined) ? undefined : greatestOf(c, peaks);
  });

/** On the average of the time between two dumps. */
export const averageFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`averageFlow ${at.path}`, (c) => {
    const [first, ...others] = bathsDumped(c.book, at);
    if (first === undefined) return runningFlow(c, at);
    // each further bath comes on top of the mean of those before it
    return others.reduce((mean, bath) => dumpOf(c, at, bath, mean)?.mean, dumps(c, at)[0]?.mean);
  });

/** Place of a figure of a drain: its own, where the floor tells drain by drain. */
export const drainPath = (
  c: Pick<Calculation, 'book' | 'floor' | 'floorPath'>,
  { tieIn }: TieInAt,
  field: 'flow' | 'bore' | 'fall',
): string => {
  const outlets = c.book.floors![c.floor]!.drains?.outlets ?? [];
  const own = outlets.findIndex((each) => each.tieIn === tieIn.tag && each[field] !== undefined);
  return own < 0 ? `${c.floorPath}/drains/${field}` : `${c.floorPath}/drains/outlets/${own}/${field}`;
};
