import type { Book, Format } from '../book/index.ts';
import type { BookReader } from './book-reader.ts';
import { type FloorLanes, readLanes } from './read-lanes.ts';
import { type FloorTimes, readLineTimes, stationOf } from './read-line-times.ts';
import { type FloorLiquid, readLiquid } from './read-liquid.ts';
import { type FloorSupply, readSupply } from './read-supply.ts';
import type { FloorModel } from './solve-floor.ts';

/** One floor read out of the book: the plain model, and what is needed to say where its numbers came from. */
export interface FloorInputs {
  readonly floorPath: string;
  readonly format?: Format;
  readonly formatPath: string;
  readonly stationPath?: string;
  readonly liquid?: FloorLiquid;
  readonly supply?: FloorSupply;
  readonly lanes?: FloorLanes;
  readonly timesRead: FloorTimes;
  /** Book place of the agreed rate, there or not. */
  readonly ratePath: string;
  readonly model: FloorModel;
  /** Accounts of what the fill and the line wanted of the book. */
  readonly forFill: BookReader;
  readonly forLine: BookReader;
  readonly forAgreement: BookReader;
}

/** Format that is asked for by tag, else the first. */
export const formatOf = (
  book: Book,
  tag: string | undefined,
): { readonly format?: Format; readonly path: string } => {
  const formats = book.line?.formats ?? [];
  const index = tag === undefined ? 0 : formats.findIndex((format) => format.tag === tag);
  const format = formats[index];
  return { path: `/line/formats/${Math.max(0, index)}`, ...(format === undefined ? {} : { format }) };
};

/** The agreed run where the agreement is silent: an hour, as the trade does. */
const usualRun = 3600;

/** Reads floor number `i` for a format; what is missing stands in the accounts. */
export const readFloor = (reader: BookReader, i: number, formatTag?: string): FloorInputs => {
  const { book } = reader;
  const floor = book.floors![i]!;
  const floorPath = `/floors/${i}`;
  const forFill = reader.scope();
  const forLine = reader.scope();
  const forAgreement = reader.scope();
  const { format, path: formatPath } = formatOf(book, formatTag);
  const fill = stationOf(book, 'fill');

  const liquid = readLiquid(forFill, floor, floorPath);
  const lanes =
    fill === undefined
      ? undefined
      : readLanes(forFill, floor, floorPath, fill.station, fill.path, format, formatPath);
  const supply =
    liquid === undefined || lanes === undefined
      ? undefined
      : readSupply(forFill, floor, floorPath, lanes.lanes, lanes.manifold, liquid);
  const level = forFill.number(`${formatPath}/level`, 'volume');
  if (lanes?.lanes.some((lane) => lane.presetPath === undefined) && level === undefined) {
    forFill.miss(`${formatPath}/level`);
  }
  if (fill !== undefined && (fill.station.lanes ?? []).length === 0) forFill.miss(`${fill.path}/lanes`);
  const timesRead = readLineTimes(forLine, floorPath);
  const rates = book.agreement?.rates ?? [];
  const agreed = Math.max(
    0,
    rates.findIndex((rate) => rate.format === undefined || rate.format === format?.tag),
  );
  const ratePath = `/agreement/rates/${agreed}/rate`;
  const own = rates[agreed];
  const agreedRate =
    own !== undefined && (own.format === undefined || own.format === format?.tag)
      ? forAgreement.needed(ratePath, 'rate')
      : undefined;
  if (agreedRate === undefined) forAgreement.miss(ratePath);
  const agreedTime = forAgreement.number('/agreement/acceptanceRun', 'time') ?? usualRun;
  const ready =
    liquid !== undefined && lanes !== undefined && supply !== undefined && lanes.incomplete.length === 0;
  return {
    floorPath,
    formatPath,
    timesRead,
    ratePath,
    forFill,
    forLine,
    forAgreement,
    model: {
      lanes: lanes?.lanes ?? [],
      times: timesRead.times,
      agreedTime: agreedTime > 0 ? agreedTime : usualRun,
      ...(ready
        ? {
            system: {
              liquid,
              source: supply.source,
              run: supply.run,
              manifold: lanes.manifold,
              lanes: lanes.lanes,
            },
          }
        : {}),
      ...(level === undefined ? {} : { level }),
      ...(agreedRate === undefined ? {} : { agreedRate }),
    },
    ...(format === undefined ? {} : { format }),
    ...(fill === undefined ? {} : { stationPath: fill.path }),
    ...(liquid === undefined ? {} : { liquid }),
    ...(supply === undefined ? {} : { supply }),
    ...(lanes === undefined ? {} : { lanes }),
  };
};
