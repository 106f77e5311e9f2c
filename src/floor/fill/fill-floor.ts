import type { UncertainFloor } from '../../fill/uncertain-floor.ts';
import type { LineTimes } from '../../line/line-times.ts';
import type { BookReader } from '../book-reader.ts';
import { type FloorInputs, readFloor } from '../read-floor.ts';
import { type RunColumn, runColumn } from './run-column.ts';
import { type SupplyDoubt, supplyUnknowns } from './supply-unknowns.ts';

/** One floor as the fill sees it. */
export interface FillFloor {
  readonly tag: string;
  /** Its place among the floors of the book. */
  readonly number: number;
  readonly inputs: FloorInputs;
  /** How the liquid in the run is counted while lanes close; absent where no run is known. */
  readonly column?: RunColumn;
  /** Lanes and supply with what is not sure of them; absent where the book does not say enough. */
  readonly uncertain?: UncertainFloor;
  readonly doubts: readonly SupplyDoubt[];
  /** Places whose absence keeps the hydraulics unknown. */
  readonly missing: readonly string[];
  /** Places for which a default was taken. */
  readonly assumed: readonly string[];
  /** The line around the fill; absent where the fill station's own times are not known. */
  readonly times?: LineTimes;
  /** Counts by lane, as the book sets them here; absent where it sets none. */
  readonly presets: readonly (number | undefined)[];
}

/** A floor of the book for a format, with the unknowns of its supply; `measured` is the part of a column that is felt. */
export const fillFloor = (
  reader: BookReader,
  number: number,
  format?: string,
  measured?: Parameters<typeof runColumn>[3],
): FillFloor => {
  const inputs = readFloor(reader, number, format);
  const { system } = inputs.fillPart;
  const doubts = supplyUnknowns(reader, number, format, inputs);
  const column = system === undefined ? undefined : runColumn(reader, inputs, system, measured);
  const counted =
    column === undefined
      ? {}
      : {
          column: {
            share: column.share,
            deviation: column.deviation,
            ...(column.ofRun === undefined ? {} : { ofRun: column.ofRun }),
          },
        };
  const { missing, assumed } = inputs.forFill.account;
  return {
    tag: inputs.floor.tag,
    number,
    inputs,
    doubts,
    missing: [...missing],
    assumed: [...assumed.keys()],
    presets: inputs.model.lanes.map(({ presetPath, preset }) =>
      presetPath === undefined ? undefined : preset,
    ),
    ...(system === undefined ? {} : { uncertain: { system, unknowns: doubts, ...counted } }),
    ...(column === undefined ? {} : { column }),
    ...(inputs.model.times.fill === undefined ? {} : { times: inputs.model.times }),
  };
};
