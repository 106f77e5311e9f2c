import type { Book, Format } from '../book/index.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import type { BookReader } from './book-reader.ts';
import { type FloorLanes, readLanes } from './read-lanes.ts';
import { type FloorTimes, readLineTimes, stationOf } from './read-line-times.ts';
import { type FloorLiquid, readLiquid } from './read-liquid.ts';
import { type FloorSupply, readSupply } from './read-supply.ts';
import type { FloorModel } from './solve-floor.ts';

/** What the fill wants of the book. */
export interface FillPart {
  readonly forFill: BookReader;
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
  extends Omit<FillPart, 'level' | 'system'>,
    LinePart,
    Omit<AgreementPart, 'agreedRate' | 'agreedTime'> {
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

/** A part of an earlier reading that a change in the book does not touch. */
export interface Untouched {
  readonly inputs: FloorInputs;
  readonly fill: boolean;
  readonly line: boolean;
  readonly agreement: boolean;
}

const readLinePart = (reader: BookReader, floorPath: string): LinePart => {
  const forLine = reader.scope();
  return { forLine, timesRead: readLineTimes(forLine, floorPath) };
};

const readFillPart = (
  reader: BookReader,
  i: number,
  format: Format | undefined,
  formatPath: string,
): FillPart => {
  const { book } = reader;
  const floor = book.floors![i]!;
  const floorPath = `/floors/${i}`;
  const forFill = reader.scope();
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
  const ready =
    liquid !== undefined && lanes !== undefined && supply !== undefined && lanes.incomplete.length === 0;
  return {
    forFill,
    ...(fill === undefined ? {} : { stationPath: fill.path }),
    ...(liquid === undefined ? {} : { liquid }),
    ...(supply === undefined ? {} : { supply }),
    ...(lanes === undefined ? {} : { lanes }),
    ...(level === undefined ? {} : { level }),
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
  };
};

const readAgreement = (reader: BookReader, format: Format | undefined): AgreementPart => {
  const forAgreement = reader.scope();
  const rates = reader.book.agreement?.rates ?? [];
  const found = rates.findIndex((rate) => rate.format === undefined || rate.format === format?.tag);
  const ratePath = `/agreement/rates/${Math.max(0, found)}/rate`;
  const agreedRate = found < 0 ? undefined : forAgreement.number(ratePath, 'rate');
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
 * Symbols  untouched  parts of an earlier reading that still hold
 */
export const readFloor = (
  reader: BookReader,
  i: number,
  formatTag?: string,
  untouched?: Untouched,
): FloorInputs => {
  const { format, path: formatPath } = formatOf(reader.book, formatTag);
  const fill =
    untouched?.fill === true ? untouched.inputs.fillPart : readFillPart(reader, i, format, formatPath);
  const line = untouched?.line === true ? untouched.inputs.linePart : readLinePart(reader, `/floors/${i}`);
  const agreement =
    untouched?.agreement === true ? untouched.inputs.agreementPart : readAgreement(reader, format);
  const { system, level, ...aboutFill } = fill;
  const { agreedRate, agreedTime, ...aboutAgreement } = agreement;
  return {
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
