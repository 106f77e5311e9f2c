import type { Book } from '../../../book/index.ts';
import { tankDumpSheet } from '../../../sheets/water/tank-dump.ts';
import type { Calculation } from '../calculation.ts';
import { type ZoneAt, zonesOf } from '../heat/zones-of.ts';
import type { Known } from '../known.ts';
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
  return on.length === 0
    ? into
    : c.derive([into, ...on], (all, ...further) =>
        Math.max(
          0,
          further.reduce((left, q) => left - q, all),
        ),
      );
};

/** Flow into a drain while the line runs. */
export const runningFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`runningFlow ${at.path}`, (c) => {
    const flows = zonesDraining(c.book, at)
      .filter(({ zone }) => zone.flow !== undefined)
      .map((zone) => zoneOverflow(c, zone));
    if (flows.length > 0) return c.derive(flows, (...all) => all.reduce((a, b) => a + b));
    return c.needed(`${at.path}/flow`, 'volumeFlow');
  });

/** Baths that are let go into a drain. */
export const bathsDumped = (book: Book, at: TieInAt): readonly ZoneAt[] =>
  zonesDraining(book, at).filter(
    ({ zone }) => zone.tank !== undefined && zone.outlet !== undefined && zone.collected !== true,
  );

/** One bath let go with everything else running on; the drain itself is looked at apart. */
export const dumpOf = (c: Calculation, at: TieInAt, { path }: ZoneAt) =>
  c.once(`dump ${path} ${at.path}`, (c) => {
    const outlet = c.needed(`${path}/outlet`, 'length');
    const every = c.number(`${path}/dumpEvery`, 'time');
    if (every === undefined) c.assume(`${path}/dumpEvery`);
    return c.run(tankDumpSheet, {
      volume: c.needed(`${path}/tank`, 'volume'),
      depth: c.needed(`${path}/depth`, 'length'),
      outlet,
      running: runningFlow(c, at),
      ...(every === undefined ? {} : { betweenDumps: every }),
      drainBore: c.number(drainPath(c, at, 'bore'), 'length') ?? outlet,
    });
  });

/** Most that the line lets go at once: the largest bath with what runs besides. */
export const peakFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`peakFlow ${at.path}`, (c) => {
    const peaks = bathsDumped(c.book, at).map((bath) => dumpOf(c, at, bath)?.peak);
    if (peaks.length === 0) return runningFlow(c, at);
    return peaks.length === 1 ? peaks[0] : c.derive(peaks, (...all) => Math.max(...all));
  });

/** On the average of the time between two dumps. */
export const averageFlow = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`averageFlow ${at.path}`, (c) => {
    const running = runningFlow(c, at);
    const means = bathsDumped(c.book, at).map((bath) => dumpOf(c, at, bath)?.mean);
    if (means.length === 0) return running;
    return means.length === 1
      ? means[0]
      : c.derive([running, ...means], (all, ...each) => each.reduce((sum, mean) => sum + mean - all, all));
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
