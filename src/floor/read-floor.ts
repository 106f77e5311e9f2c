import type { Book, Floor, Format } from '../book/index.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import { type BookReader, gather, touches } from './book-reader.ts';
import { ratePathOf } from './rate-path.ts';
import { type FloorLanes, readLanes } from './read-lanes.ts';
import { type FloorTimes, readLineTimes } from './read-line-times.ts';
import { type FloorLiquid, readLiquid } from './read-liquid.ts';
import { type FloorSupply, readSupply } from './read-supply.ts';
import type { FloorModel } from './solve-floor.ts';
import { stationOf } from './station-of.ts';
import { delayPlace } from './utilities/air/index-delay.ts';
import type { Where } from './utilities/inquiry.ts';

/** Accounts of the three parts of the fill, so that one value that is varied rereads only its own. */
export interface FillReaders {
  readonly liquid: BookReader;
  readonly lanes: BookReader;
  readonly supply: BookReader;
}

/** What the fill wants of the book. */
export interface FillPart {
  readonly forFill: BookReader;
  readonly readers: FillReaders;
  readonly stationPath?: string;
  readonly liquid?: FloorLiquid;
  readonly supply?: FloorSupply;
  readonly lanes?: FloorLanes;
  /** m3 */
  readonly level?: number;
  /** Absent where something is missing. */
  readonly system?: FillSystem;
}

/** What the line around it wants. */
export interface LinePart {
  readonly forLine: BookReader;
  readonly timesRead: FloorTimes;
}

/** What was agreed. */
export interface AgreementPart {
  readonly forAgreement: BookReader;
  /** Book place of the agreed rate, there or not. */
  readonly ratePath: string;
  /** Bottles a second. */
  readonly agreedRate?: number;
  /** s */
  readonly agreedTime: number;
}

/** One floor read out of the book: the plain model, and what is needed to say where its numbers came from. */
export interface FloorInputs
  extends Omit<FillPart, 'level' | 'system' | 'readers'>,
    LinePart,
    Omit<AgreementPart, 'agreedRate' | 'agreedTime'> {
  readonly floor: Floor;
  /** Its place among the floors of the book. */
  readonly floorNumber: number;
  readonly floorPath: string;
  readonly format?: Format;
  readonly formatPath: string;
  readonly model: FloorModel;
  readonly fillPart: FillPart;
  readonly linePart: LinePart;
  readonly agreementPart: AgreementPart;
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

/** An earlier reading, all of which still holds but what the value at one place went into. */
export interface Untouched {
  readonly inputs: FloorInputs;
  readonly path: string;
}

const readLinePart = (reader: BookReader, where: Where): LinePart => {
  const forLine = reader.scope();
  return { forLine, timesRead: readLineTimes(forLine, where) };
};

const readFillPart = (
  reader: BookReader,
  i: number,
  format: Format | undefined,
  formatPath: string,
  untouched?: Untouched,
): FillPart => {
  const { book } = reader;
  const floor = book.floors![i]!;
  const floorPath = `/floors/${i}`;
  const before = untouched?.inputs.fillPart;
  const same = (of: keyof FillReaders): boolean =>
    untouched !== undefined && before !== undefined && !touches(before.readers[of], untouched.path);
  const fill = stationOf(book, 'fill');

  const sameLiquid = same('liquid');
  const forLiquid = sameLiquid ? before!.readers.liquid : reader.scope();
  const liquid = sameLiquid ? before!.liquid : readLiquid(forLiquid, floor, floorPath);
  const sameLanes = same('lanes');
  const forLanes = sameLanes ? before!.readers.lanes : reader.scope();
  let lanes = before?.lanes;
  let level = before?.level;
  if (!sameLanes) {
    lanes =
      fill === undefined
        ? undefined
        : readLanes(forLanes, floor, floorPath, fill.station, fill.path, format, formatPath);
    level = forLanes.number(`${formatPath}/level`, 'volume');
    if (lanes?.lanes.some((lane) => lane.presetPath === undefined) && level === undefined) {
      forLanes.miss(`${formatPath}/level`);
    }
    if (fill !== undefined && (fill.station.lanes ?? []).length === 0) forLanes.miss(`${fill.path}/lanes`);
  }
  // a reading says what flowed by the lanes that were open, and a regulator's height counts by the density
  const alone = floor.supply?.source?.kind !== 'reading' || sameLanes;
  const sameSupply = same('supply') && sameLiquid && alone;
  const forSupply = sameSupply ? before!.readers.supply : reader.scope();
  const supply = sameSupply
    ? before!.supply
    : liquid === undefined || lanes === undefined
      ? undefined
      : readSupply(forSupply, floor, floorPath, lanes.lanes, lanes.manifold, liquid);
  const ready = lanes !== undefined && lanes.incomplete.length === 0;
  const forFill = reader.scope();
  if (untouched === undefined) gather(forFill, [forLiquid, forLanes, forSupply]);
  return {
    forFill,
    readers: { liquid: forLiquid, lanes: forLanes, supply: forSupply },
    ...(fill === undefined ? {} : { stationPath: fill.path }),
    ...(liquid === undefined ? {} : { liquid }),
    ...(supply === undefined ? {} : { supply }),
    ...(lanes === undefined ? {} : { lanes }),
    ...(level === undefined ? {} : { level }),
    ...(ready && liquid !== undefined && lanes !== undefined && supply !== undefined
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
  };
};

const readAgreement = (reader: BookReader, formatPath: string): AgreementPart => {
  const forAgreement = reader.scope();
  const ratePath = ratePathOf(reader.book, formatPath);
  const agreedRate = forAgreement.number(ratePath, 'rate');
  if (agreedRate === undefined) forAgreement.miss(ratePath);
  const agreedTime = forAgreement.number('/agreement/acceptanceRun', 'time') ?? usualRun;
  return {
    forAgreement,
    ratePath,
    agreedTime: agreedTime > 0 ? agreedTime : usualRun,
    ...(agreedRate === undefined ? {} : { agreedRate }),
  };
};

/**
 * Reads floor number `i` for a format; what is missing stands in the accounts.
 *
 * Symbols  untouched  an earlier reading and the one place whose value is another now
 */
export const readFloor = (
  reader: BookReader,
  i: number,
  formatTag?: string,
  untouched?: Untouched,
): FloorInputs => {
  const { format, path: formatPath } = formatOf(reader.book, formatTag);
  const same = (of: BookReader | undefined): boolean =>
    untouched !== undefined && of !== undefined && !touches(of, untouched.path);
  const before = untouched?.inputs;
  const fill = same(before?.forFill)
    ? before!.fillPart
    : readFillPart(reader, i, format, formatPath, untouched);
  const where = { floor: i, formatPath };
  const line =
    untouched?.path !== delayPlace(where) && same(before?.forLine)
      ? before!.linePart
      : readLinePart(reader, where);
  const agreement = same(before?.forAgreement) ? before!.agreementPart : readAgreement(reader, formatPath);
  const { system, level, readers: _, ...aboutFill } = fill;
  const { agreedRate, agreedTime, ...aboutAgreement } = agreement;
  return {
    floor: reader.book.floors![i]!,
    floorNumber: i,
    floorPath: `/floors/${i}`,
    formatPath,
    fillPart: fill,
    linePart: line,
    agreementPart: agreement,
    ...aboutFill,
    ...line,
    ...aboutAgreement,
    ...(format === undefined ? {} : { format }),
    model: {
      lanes: fill.lanes?.lanes ?? [],
      times: line.timesRead.times,
      agreedTime,
      ...(system === undefined ? {} : { system }),
      ...(level === undefined ? {} : { level }),
      ...(agreedRate === undefined ? {} : { agreedRate }),
    },
  };
};
