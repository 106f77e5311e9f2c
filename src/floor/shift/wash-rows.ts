import type { Book } from '../../book/index.ts';
import type { LineTimes } from '../../line/line-times.ts';
import type { WasherStation } from '../../line/shift/index.ts';
import type { BookReader } from '../book-reader.ts';

type Washer = Extract<NonNullable<NonNullable<Book['line']>['stations']>[number], { kind: 'washer' }>;

/**
 * The washer for a shift: its rows, and for each zone how a stand between two strokes wets.
 *
 * Assumes  a dead time is one of the whole index, so that the stroke is a part of it; one that is shorter than the stroke
 *          wets no longer than the stand
 */
export const washRows = (
  reader: BookReader,
  washer: Washer,
  path: string,
  times: NonNullable<LineTimes['washer']>,
): Omit<WasherStation, 'stops'> => {
  let known = true;
  const zones = (washer.zones ?? []).map((zone, i) => {
    const at = `${path}/zones/${i}`;
    if (zone.rows === undefined) {
      reader.assume(`${at}/rows`);
      known = false;
    }
    const said = reader.number(`${at}/dead`, 'time');
    const byShare = said === undefined && zone.sprayFraction !== undefined;
    if (said === undefined && !byShare && zone.soaks !== true) reader.assume(`${at}/sprayFraction`);
    const dead = byShare ? 0 : Math.max(0, (said ?? times.stroke) - times.stroke);
    const shuts = byShare ? undefined : reader.number(`${at}/timeOut`, 'time');
    return {
      zone: zone.tag,
      rows: zone.rows ?? 1,
      share: byShare ? zone.sprayFraction! : 1,
      dead,
      // the spray shuts so long after it opened, and it opens after the dead time
      timeOut: shuts === undefined ? Number.POSITIVE_INFINITY : shuts + dead,
      soaks: zone.soaks === true,
      emptying: reader.number(`${at}/emptying`, 'time') ?? 0,
    };
  });
  const inZones = zones.reduce((sum, { rows }) => sum + rows, 0);
  if (washer.rows === undefined && inZones === 0) reader.assume(`${path}/rows`);
  return {
    station: times.station,
    row: times.row,
    rows: Math.max(washer.rows ?? 0, inZones),
    stroke: times.stroke,
    dwell: times.dwell,
    zones: known ? zones : [],
  };
};
