import type { ColumnRow } from '../hydraulics/column.ts';
import { columnEffect } from '../hydraulics/column-effect.ts';
import { fillRow } from '../hydraulics/fill-row.ts';
import { manifoldBalance } from '../hydraulics/manifold-balance.ts';
import { runInertia } from '../hydraulics/run-inertia.ts';
import { startStored } from '../hydraulics/stored.ts';
import { lostTime } from '../sheets/water/inertia-lag.ts';
import { flowsByChance, flowsInOrder } from './closing-order.ts';
import { type LaneScale, laneOf, laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { type ColumnShare, movedFloor, type UncertainFloor } from './uncertain-floor.ts';

/** Lanes that run together, with their counts. */
export interface RowSetup {
  /** Their places among all lanes, rising. */
  readonly lanes: readonly number[];
  readonly presets: readonly number[];
  /** Whether the lane is throttled on purpose. */
  readonly throttled: readonly boolean[];
}

/** Lanes and supply of one floor, and where the unknowns of each stand in one list. */
export interface RowModel {
  readonly floor: UncertainFloor;
  readonly scales: readonly LaneScale[];
  /** Lanes that some trial throttled: each has one unknown more. */
  readonly throttles: readonly number[];
}

/** Place of what moves the share of the column, after the lanes' own. */
export const columnAt = ({ scales }: RowModel): number => perLane * scales.length;
export const supplyAt = (model: RowModel): number => columnAt(model) + 1;
/** Place of what moves the share of this floor's run alone, behind what else is not known of its supply. */
export const runAt = (model: RowModel): number => supplyAt(model) + model.floor.unknowns.length;
const throttlesAt = (model: RowModel): number => runAt(model) + (model.floor.column?.ofRun ? 1 : 0);
const throttleAt = (model: RowModel, lane: number): number =>
  throttlesAt(model) + model.throttles.indexOf(lane);
export const sizeOf = (model: RowModel): number => throttlesAt(model) + model.throttles.length;

const noColumn: ColumnShare = { share: 0, deviation: 0 };

/** A throttled lane passes half, or a quarter, or all of it: ln share has this mean and standard deviation. */
const throttleMean = -Math.LN2;
const throttleDeviation = Math.LN2;

export interface RowAnswer {
  /** Mean volume of each lane, m3. */
  readonly volumes: readonly number[];
  /** From the opening of the lanes to the lane fully shut, s. */
  readonly times: readonly number[];
  /** Times of the counts, s. */
  readonly ends: readonly number[];
  /** At the count, m3/s. */
  readonly flows: readonly number[];
  /** s */
  readonly lag: number;
  /** Time constant of the liquid in the run, s. */
  readonly inertia: number;
  /** At the manifold with all lanes of the row open, Pa gauge. */
  readonly pressure: number;
  /** By how much the whole column would move volumes and times; absent where it is left out. */
  readonly column?: ColumnRow;
}

/**
 * One row where the unknowns stand so; undefined where a lane never ends.
 *
 * Symbols  order  s  by which the ends of two lanes move against each other, 0 for the order of the means; or, by lane,
 *                 the ends of a row whose order is kept whatever the unknowns do to it
 *          column  by lane, what the whole column does of a row so near that it is the same; absent, it is worked out
 */
export const rowAnswer = (
  model: RowModel,
  { lanes, presets, throttled }: RowSetup,
  unknowns: Float64Array,
  order: number | readonly number[],
  column?: ColumnRow,
): RowAnswer | undefined => {
  const from = supplyAt(model);
  const floor = movedFloor(model.floor, unknowns.subarray(from, from + model.floor.unknowns.length));
  const system = {
    ...floor,
    lanes: lanes.map((lane, i) => {
      const scale = model.scales[lane]!;
      const share = throttled[i]
        ? Math.exp(throttleMean + throttleDeviation * unknowns[throttleAt(model, lane)]!)
        : 1;
      return laneOf(scale, laneValues(scale, unknowns, perLane * lane), presets[i]!, share);
    }),
  };
  const row = fillRow(system, startStored(system.source));
  if ('stuck' in row) return undefined;
  const { pressure, flow } = manifoldBalance(system);
  const inertia = runInertia(system, flow).timeConstant;
  const lag = lostTime(Number.POSITIVE_INFINITY, inertia);
  const { share, deviation, ofRun = 0 } = model.floor.column ?? noColumn;
  const moved =
    share + deviation * unknowns[columnAt(model)]! + (ofRun === 0 ? 0 : ofRun * unknowns[runAt(model)]!);
  const whole = model.floor.column === undefined ? undefined : (column ?? columnEffect(system, row));
  const flows =
    typeof order === 'number' ? flowsByChance(system, row, order) : flowsInOrder(system, row, order);
  const otherwise = flows.map(
    (flow, i) => (flow - row.lanes[i]!.flowAtEnd) * (system.lanes[i]!.delay + 0.5 * system.lanes[i]!.closing),
  );
  // a column that gives way slowly knows no order of closing, and nothing of its chance
  const effect =
    whole === undefined || column !== undefined
      ? whole
      : { ...whole, volumes: whole.volumes.map((by, i) => by - otherwise[i]!) };
  return {
    volumes: row.lanes.map(({ volume }, i) => volume + otherwise[i]! + moved * (effect?.volumes[i] ?? 0)),
    times: row.lanes.map(({ fillTime }, i) => fillTime + lag + moved * (effect?.times[i] ?? 0)),
    flows,
    ends: row.lanes.map(({ countTime }) => countTime),
    lag,
    inertia,
    pressure,
    ...(effect === undefined ? {} : { column: effect }),
  };
};

/** How volumes, times and the pressure of a row move with each unknown; by lane of the row, over all unknowns. */
export interface RowSlopes {
  readonly volumes: readonly Float64Array[];
  readonly times: readonly Float64Array[];
  readonly pressure: Float64Array;
}

/** Small against what bends a flow, large against what a row is off, in standard deviations of the unknown. */
const step = 1e-3;

/**
 * Slopes of a row.
 *
 * Method   pulse, after-run, closing and drip of a lane enter V = (N - phase) b + q tau + drip and t in closed form;
 *          what moves the flows, the valve coefficients and the supply, by differences of whole rows. Where a lane has
 *          two speeds or its level rises over the nozzle the volume of its pulse moves the flows too. The order of closing
 *          is kept: where two lanes end together it would give a slope that holds for milliseconds
 * Symbols  base  the row where the unknowns stand, its lanes in the order of their means
 * Cost     a row for each lane and each unknown of the supply
 */
export const rowSlopes = (
  model: RowModel,
  setup: RowSetup,
  unknowns: Float64Array,
  base = rowAnswer(model, setup, unknowns, 0),
): RowSlopes | undefined => {
  if (base === undefined) return undefined;
  const size = sizeOf(model);
  const { deviation, ofRun = 0 } = model.floor.column ?? noColumn;
  const slopes: RowSlopes = {
    volumes: setup.lanes.map(() => new Float64Array(size)),
    times: setup.lanes.map(() => new Float64Array(size)),
    pressure: new Float64Array(size),
  };
  const byDifference = (column: number): boolean => {
    const moved = Float64Array.from(unknowns);
    moved[column] = moved[column]! + step;
    const there = rowAnswer(model, setup, moved, base.ends, base.column);
    if (there === undefined) return false;
    setup.lanes.forEach((_, i) => {
      slopes.volumes[i]![column] = (there.volumes[i]! - base.volumes[i]!) / step;
      slopes.times[i]![column] = (there.times[i]! - base.times[i]!) / step;
    });
    slopes.pressure[column] = (there.pressure - base.pressure) / step;
    return true;
  };
  setup.lanes.forEach((lane, i) => {
    const { lane: book, priors, phaseCounts } = model.scales[lane]!;
    const at = perLane * lane;
    const volume = slopes.volumes[i]!;
    const time = slopes.times[i]!;
    const flow = base.flows[i]!;
    byDifference(at + offsetOf.kv);
    if (setup.throttled[i]) byDifference(throttleAt(model, lane));
    if (book.kvSlow !== book.kv || book.levelAt !== undefined) byDifference(at + offsetOf.pulse);
    else {
      const counted = (Math.max(0, setup.presets[i]! - phaseCounts) * priors.pulse) / book.pulses;
      volume[at + offsetOf.pulse] = counted;
      time[at + offsetOf.pulse] = flow > 0 ? counted / flow : 0;
    }
    volume[at + offsetOf.afterRun] = flow * priors.afterRun;
    time[at + offsetOf.afterRun] = priors.afterRun;
    time[at + offsetOf.halfClosing] = priors.halfClosing;
    volume[at + offsetOf.drip] = priors.drip;
    const column = columnAt(model);
    volume[column] = deviation * (base.column?.volumes[i] ?? 0);
    time[column] = deviation * (base.column?.times[i] ?? 0);
    if (ofRun > 0) {
      volume[runAt(model)] = ofRun * (base.column?.volumes[i] ?? 0);
      time[runAt(model)] = ofRun * (base.column?.times[i] ?? 0);
    }
  });
  const supply = supplyAt(model);
  model.floor.unknowns.forEach((_, i) => {
    byDifference(supply + i);
  });
  return slopes;
};
