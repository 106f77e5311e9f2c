import type { Book, Station } from '../../book/index.ts';
import type { Source } from '../../hydraulics/system.ts';
import type { LineTimes } from '../../line/line-times.ts';
import type { ShiftLine, StopCause } from '../../line/shift/index.ts';
import type { BookReader } from '../book-reader.ts';
import type { FloorInputs } from '../read-floor.ts';
import type { FloorSolution } from '../solve-floor.ts';
import { stationOf } from '../station-of.ts';
import { fallingSupply } from './falling-supply.ts';
import { fillSpread } from './fill-spread.ts';
import { lineStops } from './line-stops.ts';
import { sorterStops, stopsHere } from './stops-here.ts';
import { vesselSpread } from './vessel-spread.ts';
import { washRows } from './wash-rows.ts';

/** Everything of one floor that goes into its line for a shift. */
export interface ShiftGround {
  readonly reader: BookReader;
  readonly inputs: FloorInputs;
  readonly solution: FloorSolution;
  /** s */
  readonly duration: number;
  readonly stopsAt: (station: number) => readonly StopCause[];
  /** Standard deviation of what a lane gives from set to set, m3, where trials told it. */
  readonly deviations?: readonly number[] | undefined;
}

const endless = Number.POSITIVE_INFINITY;

const numberOf = (book: Book, kind: Station['kind']): number =>
  (book.line?.stations ?? []).findIndex((station) => station.kind === kind);

const loadOf = ({ reader, stopsAt }: ShiftGround): ShiftLine['load'] => {
  const found = stationOf(reader.book, 'load');
  if (found === undefined) return undefined;
  const { station, path } = found;
  const rate = reader.number(`${path}/rate`, 'rate');
  // without a rate the line is never short of bottles
  if (rate === undefined) {
    reader.assume(`${path}/rate`);
    return undefined;
  }
  return {
    station: station.tag,
    by: station.by ?? 'operator',
    seconds: 1 / rate,
    per: 'bottle',
    missing: reader.number(`${path}/missing`, 'ratio') ?? 0,
    room: station.capacity ?? endless,
    stops: stopsAt(numberOf(reader.book, 'load')),
  };
};

const isVessel = (source: Source): boolean => source.kind === 'pumped' && source.vessel !== undefined;

const fillOf = (ground: ShiftGround, times: LineTimes): ShiftLine['fill'] => {
  const { reader, solution, duration, stopsAt } = ground;
  const { fill, line, hour } = solution;
  if (fill === undefined || line === undefined || times.fill === undefined) return undefined;
  const supply = fallingSupply(fill, line.period, duration);
  const spread = fillSpread(
    fill.system,
    fill.row,
    supply === undefined ? 0 : fill.row.fillTime,
    ground.deviations,
  );
  return {
    ...times.fill,
    lanes: fill.system.lanes.length,
    lag: fill.lag,
    filling: isVessel(fill.system.source)
      ? vesselSpread(
          (hour?.walk?.fills ?? []).map(({ fillTime }) => fillTime),
          spread,
          fill.row.fillTime,
        )
      : spread,
    ...(supply === undefined ? {} : { supply }),
    stops: stopsAt(numberOf(reader.book, 'fill')),
  };
};

const chuteOf = ({ reader }: ShiftGround, tag: string): NonNullable<ShiftLine['closing']>['chute'] => {
  const found = stationOf(reader.book, 'closing');
  const chute = found?.station.chute;
  if (found === undefined || chute === undefined) return undefined;
  const path = `${found.path}/chute`;
  const { capsBelowLow: low, capsBetweenSensors: between } = chute;
  const high =
    chute.capsBelowHigh ?? (low === undefined || between === undefined ? undefined : low + between);
  const rate = reader.number(`${path}/sorterRate`, 'rate');
  // a chute of which not everything is known never lets the heads wait
  if (low === undefined || high === undefined || rate === undefined) {
    if (low === undefined) reader.assume(`${path}/capsBelowLow`);
    if (high === undefined && between === undefined) reader.assume(`${path}/capsBetweenSensors`);
    if (rate === undefined) reader.assume(`${path}/sorterRate`);
    return undefined;
  }
  return {
    station: chute.sorter ?? `${tag} sorter`,
    low,
    high,
    start: high,
    rate,
    runUp: reader.numberOr(`${path}/runUp`, 'time', 0),
    stops: sorterStops(reader, numberOf(reader.book, 'closing')),
  };
};

const closingOf = (ground: ShiftGround, times: LineTimes): ShiftLine['closing'] => {
  const { reader, stopsAt } = ground;
  const found = stationOf(reader.book, 'closing');
  if (found === undefined || times.closing === undefined) return undefined;
  const chute = chuteOf(ground, times.closing.station);
  return {
    ...times.closing,
    transit: 0,
    rejected: reader.number(`${found.path}/rejected`, 'ratio') ?? 0,
    ...(chute === undefined ? {} : { chute }),
    stops: stopsAt(numberOf(reader.book, 'closing')),
  };
};

const takeOffOf = ({ reader, stopsAt }: ShiftGround, times: LineTimes): ShiftLine['takeOff'] => {
  const found = stationOf(reader.book, 'take-off');
  if (found === undefined || times.takeOff === undefined) return undefined;
  return {
    station: times.takeOff.station,
    by: found.station.by ?? 'operator',
    perBottle: 1 / times.takeOff.rate,
    room: times.takeOff.room,
    transit: 0,
    stops: stopsAt(numberOf(reader.book, 'take-off')),
  };
};

/** The line of one floor for a shift, station by station out of the book. */
export const shiftLineOf = (ground: ShiftGround): ShiftLine => {
  const { reader, inputs, duration, stopsAt } = ground;
  const { book } = reader;
  const { times } = inputs.model;
  const stations = book.line?.stations ?? [];
  const washer = stationOf(book, 'washer');
  const discharge = stationOf(book, 'discharge');
  const tags = stations.map(({ tag }) => tag);
  const stopsOf = (tag: string): readonly StopCause[] => stopsAt(tags.indexOf(tag));
  const load = loadOf(ground);
  const fill = fillOf(ground, times);
  const closing = closingOf(ground, times);
  const takeOff = takeOffOf(ground, times);
  return {
    duration,
    warmUp: 0,
    start: 'washer full',
    ...(load === undefined ? {} : { load }),
    ...(washer === undefined || times.washer === undefined
      ? {}
      : {
          washer: {
            ...washRows(reader, washer.station, washer.path, times.washer),
            stops: stopsOf(washer.station.tag),
          },
        }),
    ...(discharge === undefined
      ? {}
      : {
          discharge: {
            station: discharge.station.tag,
            seconds: times.way.find(({ station }) => station === discharge.station.tag)?.seconds ?? 0,
            fallen: reader.number(`${discharge.path}/fallen`, 'ratio') ?? 0,
            stops: stopsOf(discharge.station.tag),
          },
        }),
    conveyors: times.way
      .filter(({ step }) => step === 'convey')
      .map(({ step: _, ...piece }) => {
        if (piece.accumulates === undefined)
          reader.assume(`/line/stations/${tags.indexOf(piece.station)}/accumulates`);
        return { ...piece, stops: stopsOf(piece.station) };
      }),
    wayRoom: times.wayRoom,
    ...(fill === undefined ? {} : { fill }),
    ...(closing === undefined ? {} : { closing }),
    ...(takeOff === undefined ? {} : { takeOff }),
    holds: times.holds,
    lineStops: lineStops(reader),
  };
};

/** The stops of every station of a floor, and whether each says something of them. */
export const stopsOfStations = (reader: BookReader, floor: number) =>
  (reader.book.line?.stations ?? []).map((_, station) => stopsHere(reader, floor, station));
