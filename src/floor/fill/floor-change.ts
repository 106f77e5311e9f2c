import { type Allowance, allowancesFor, type FloorChange, usualMeterClass } from '../../fill/allowances.ts';
import type { OfRuns } from '../../fill/row-forecast.ts';
import { manifoldBalance } from '../../hydraulics/manifold-balance.ts';
import { parseQuantity } from '../../quantity/parse-quantity.ts';
import { atmosphericPressure } from '../../sheets/water/atmospheric-pressure.ts';
import type { BookReader } from '../book-reader.ts';
import { stationOf } from '../station-of.ts';
import type { FillFloor } from './fill-floor.ts';
import type { RunColumn } from './run-column.ts';

/** The run of one of two floors. */
export interface FloorRun {
  readonly of: keyof OfRuns;
  readonly floor: string;
  readonly column: RunColumn;
}

/** What two floors change for the lanes, and the lines that stand for it. */
export interface FloorAllowances {
  readonly allowances: readonly Allowance[];
  /** Kinematic viscosity there over here. */
  readonly viscosityRatio: number;
  /** Flow of all lanes there over here. */
  readonly flowRatio: number;
  /** Absolute pressure of the valves' air there over here; absent where one of the two is not known. */
  readonly airRatio?: number;
  /** Largest error of the meters over their range, as a share: off their plates, else what is usual. */
  readonly meterClass: number;
  /** The liquid in the run while lanes close, here and there; without a floor of which no run is known. */
  readonly runs: readonly FloorRun[];
  /** The call wants nothing allowed for: the answer speaks of the same liquid and the same air alone. */
  readonly waived: boolean;
  /** Whether the same product runs on both: without a line for it the answer would speak of that alone. */
  readonly sameProduct: boolean;
}

/** Pressure of the air at the filler's valves, Pa absolute: as it is read at the drop, else as the regulator is set. */
const valveAir = (reader: BookReader, { inputs }: FillFloor): number | undefined => {
  const { floor, floorPath } = inputs;
  const fill = stationOf(reader.book, 'fill')?.station.tag;
  const drop = reader.book.line?.cylinders?.find(({ station }) => station === fill)?.drop;
  const place = (floor.air?.drops ?? []).findIndex((each) => each.drop === drop);
  const gauge =
    (place < 0 ? undefined : reader.number(`${floorPath}/air/drops/${place}/pressure`, 'gaugePressure')) ??
    reader.number(`${floorPath}/air/regulator/set`, 'gaugePressure');
  const altitude = reader.number(`${floorPath}/room/altitude`, 'length') ?? 0;
  return gauge === undefined ? undefined : gauge + atmosphericPressure(altitude);
};

/** Largest error of the meters over their range, off their plates; undefined where none says it as a share. */
const meterClass = (reader: BookReader): number | undefined => {
  const shares = (stationOf(reader.book, 'fill')?.station.lanes ?? []).flatMap(({ meter }) => {
    const read = meter?.class === undefined ? undefined : parseQuantity(meter.class, 'ratio', { path: '' });
    return read?.ok ? [read.value.value as number] : [];
  });
  return shares.length === 0 ? undefined : Math.max(...shares);
};

/** What was measured in the place of a line, and whether lines are wanted at all. */
export interface AllowanceAsk {
  readonly measured?: NonNullable<FloorChange['measured']>;
  readonly waived?: boolean;
}

/** The allowances between two floors; none where the hydraulics of one of them are not known. */
export const floorAllowances = (
  reader: BookReader,
  here: FillFloor,
  there: FillFloor,
  { measured, waived = false }: AllowanceAsk = {},
): FloorAllowances | undefined => {
  if (here.uncertain === undefined || there.uncertain === undefined) return undefined;
  const [one, other] = [here.uncertain.system, there.uncertain.system];
  const thickness = ({ liquid }: typeof one): number => liquid.viscosity / liquid.density;
  const viscosityRatio = thickness(other) / thickness(one);
  const flowRatio = manifoldBalance(other).flow / manifoldBalance(one).flow;
  const [airHere, airThere] = [valveAir(reader, here), valveAir(reader, there)];
  const airRatio = airHere === undefined || airThere === undefined ? undefined : airThere / airHere;
  const plate = meterClass(reader);
  const change: FloorChange = {
    flowRatio: Number.isFinite(flowRatio) && flowRatio > 0 ? flowRatio : 1,
    viscosityRatio,
    airRatio: airRatio ?? 1,
    ...(plate === undefined ? {} : { meterClass: plate }),
    ...(measured === undefined ? {} : { measured }),
  };
  return {
    allowances: waived ? [] : allowancesFor(change),
    waived,
    viscosityRatio,
    flowRatio: change.flowRatio,
    meterClass: plate ?? usualMeterClass,
    sameProduct: here.inputs.liquid?.product === there.inputs.liquid?.product,
    ...(airRatio === undefined ? {} : { airRatio }),
    runs: (['here', 'there'] as const).flatMap((of) => {
      const { tag, column } = { here, there }[of];
      return column === undefined ? [] : [{ of, floor: tag, column }];
    }),
  };
};
