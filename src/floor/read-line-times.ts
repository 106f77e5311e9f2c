import type { LineTimes, WayPiece } from '../line/line-times.ts';
import { indexPeriod } from '../sheets/rate/index-period.ts';
import type { BookReader } from './book-reader.ts';
import { driveStretch } from './drive-stretch.ts';
import { holdRulesOf } from './hold-rules-of.ts';
import { stationOf } from './station-of.ts';
import { delayPlace, type IndexDelay, indexDelay } from './utilities/air/index-delay.ts';
import type { Where } from './utilities/inquiry.ts';

export interface FloorTimes {
  readonly times: LineTimes;
  /** Washer's stretch by its drive on this floor, for the working. */
  readonly stretch: number;
  /** What the air of this floor makes of the cylinders of the index. */
  readonly delay: IndexDelay;
}

/** Times of the stations on one floor; the fill itself is put in when it has been computed. */
export const readLineTimes = (reader: BookReader, where: Where): FloorTimes => {
  const { book } = reader;
  const floorPath = `/floors/${where.floor}`;
  const stations = book.line?.stations ?? [];
  const washer = stationOf(book, 'washer');
  const fill = stationOf(book, 'fill');
  const closing = stationOf(book, 'closing');
  const takeOff = stationOf(book, 'take-off');

  const stretch = driveStretch(reader, floorPath, washer?.station.drive);
  const delay = indexDelay(reader, where, washer?.station.cylinders ?? []);
  const added = reader.changes.get(delayPlace(where)) ?? delay.added;
  for (const path of delay.assumed) reader.assume(path);
  let washerTimes: LineTimes['washer'];
  if (washer !== undefined) {
    const stroke = reader.needed(`${washer.path}/stroke`, 'time');
    const dwell = reader.needed(`${washer.path}/dwell`, 'time');
    if (washer.station.row === undefined) reader.miss(`${washer.path}/row`);
    if (delay.stalls !== undefined) reader.miss(`${floorPath}/air`);
    else if (stroke !== undefined && dwell !== undefined && washer.station.row !== undefined) {
      const here = indexPeriod(stroke, dwell, stretch, washer.station.dwellBy ?? 'timer', added);
      washerTimes = {
        station: washer.station.tag,
        row: washer.station.row,
        stroke: here.strokeHere,
        dwell: here.dwellHere,
      };
    }
  }

  const from = stations.findIndex((station) => station.kind === 'washer');
  const to = stations.findIndex((station) => station.kind === 'fill');
  const way: WayPiece[] = [];
  let wayRoom = 0;
  let roomKnown = false;
  for (let i = from + 1; i < (to < 0 ? stations.length : to); i++) {
    const station = stations[i]!;
    const path = `/line/stations/${i}`;
    if (station.kind === 'discharge') {
      way.push({ station: station.tag, step: 'setUp', seconds: reader.numberOr(`${path}/time`, 'time', 0) });
    } else if (station.kind === 'conveyor') {
      const length = reader.number(`${path}/length`, 'length');
      const speed = reader.number(`${path}/speed`, 'velocity');
      if (length === undefined || speed === undefined)
        reader.assume(length === undefined ? `${path}/length` : `${path}/speed`);
      else {
        const pace = speed / driveStretch(reader, floorPath, station.drive);
        way.push({
          station: station.tag,
          step: 'convey',
          seconds: length / pace,
          ...(station.accumulates === undefined ? {} : { accumulates: station.accumulates }),
          ...(station.capacity === undefined ? {} : { room: station.capacity }),
        });
      }
    } else continue;
    if (station.capacity !== undefined) {
      wayRoom += station.capacity;
      roomKnown = true;
    }
  }

  const fillPart = (name: 'travelIn' | 'lift' | 'drip' | 'lower' | 'clearOut'): number =>
    fill === undefined ? 0 : reader.numberOr(`${fill.path}/${name}`, 'time', 0);
  let closingTimes: LineTimes['closing'];
  if (closing !== undefined) {
    const perBottle = reader.needed(`${closing.path}/perBottle`, 'time');
    if (perBottle !== undefined) {
      closingTimes = {
        station: closing.station.tag,
        heads: Math.max(1, closing.station.heads ?? 1),
        perBottle,
        room: closing.station.room ?? Number.POSITIVE_INFINITY,
      };
    }
  }
  let takeOffTimes: LineTimes['takeOff'];
  if (takeOff !== undefined) {
    const rate = reader.number(`${takeOff.path}/rate`, 'rate');
    if (rate !== undefined && rate > 0) {
      const room = takeOff.station.capacity ?? Number.POSITIVE_INFINITY;
      takeOffTimes = { station: takeOff.station.tag, rate, room };
    } else reader.assume(`${takeOff.path}/rate`);
  }
  const are = {
    washer: washerTimes !== undefined,
    fill: fill !== undefined,
    closing: closingTimes !== undefined,
    takeOff: takeOffTimes !== undefined,
  };
  // a station of whose time nothing is known holds nothing
  const holds = holdRulesOf(book).holds.filter(
    ({ holds: held = 'washer', by = 'fill' }) => are[held] && are[by],
  );
  return {
    stretch,
    delay,
    times: {
      way,
      wayRoom: roomKnown ? wayRoom : Number.POSITIVE_INFINITY,
      holds,
      ...(washerTimes === undefined ? {} : { washer: washerTimes }),
      ...(fill === undefined
        ? {}
        : {
            fill: {
              station: fill.station.tag,
              lanes: (fill.station.lanes ?? []).filter((lane) => lane.out !== true).length,
              travelIn: fillPart('travelIn'),
              lift: fillPart('lift'),
              lag: 0,
              filling: 0,
              drip: fillPart('drip'),
              lower: fillPart('lower'),
              clearOut: fillPart('clearOut'),
            },
          }),
      ...(closingTimes === undefined ? {} : { closing: closingTimes }),
      ...(takeOffTimes === undefined ? {} : { takeOff: takeOffTimes }),
    },
  };
};
