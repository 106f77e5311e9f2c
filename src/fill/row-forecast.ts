import type { Allowance, Moved } from './allowances.ts';
import { deviate, dotOf, drawnPairs, freeDimension } from './drawn-lanes.ts';
import type { EstimateBasis } from './lane-estimate.ts';
import { type LaneScale, laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { figureParts } from './linear-figure.ts';
import {
  type RowAnswer,
  type RowModel,
  type RowSetup,
  type RowSlopes,
  rowAnswer,
  rowSlopes,
  runAt,
  sizeOf,
  supplyAt,
} from './row-model.ts';
import type { VariancePart } from './student-sum.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

/** Where a row is foretold: the floor of the trials itself, or another one that they say nothing of. */
export interface Place {
  readonly floor: UncertainFloor;
  readonly allowances: readonly Allowance[];
}

/** A figure of a row with all that makes it uncertain. */
export interface ForecastFigure {
  readonly value: number;
  /** Of the mean: scatter of volumes, of times, what was known before, supply there, allowances, order of closing. */
  readonly parts: readonly VariancePart[];
  /** Shares of the variance by cause, adding up to 1. */
  readonly causes: ForecastCauses;
  /** How the figure moves with each unknown that the trials told of. */
  readonly slope: Float64Array;
  /** Shares of the variance that go when it is known how stiff a run is. */
  readonly ofRuns: OfRuns;
}

/** What is open as long as nobody knows how stiff the runs of two floors are; 0 where it is known. */
export interface OfRuns {
  readonly here: number;
  readonly there: number;
}

export interface ForecastCauses {
  readonly volumes: number;
  readonly times: number;
  readonly before: number;
  readonly supply: number;
  readonly allowances: number;
  readonly order: number;
}

export interface RowForecast {
  readonly answer: RowAnswer;
  /** How the row moves with the unknowns of the place. */
  readonly slopes: RowSlopes;
  readonly departures: Departures;
  /** By lane. */
  readonly volumes: readonly ForecastFigure[];
  readonly times: readonly ForecastFigure[];
  /** The slowest lane. */
  readonly rowTime: ForecastFigure;
  /** Share of what may be true in which some lane never ends. */
  readonly stuckShare: number;
}

/** The lane with what the other floor is expected to change of it. */
const shifted = (scale: LaneScale, allowances: readonly Allowance[]): LaneScale => {
  const factor = (moves: Moved): number =>
    allowances.reduce((product, each) => (each.moves === moves ? product * (1 + each.shift) : product), 1);
  const { lane, priors } = scale;
  const kv = factor('kv');
  const pulse = factor('pulse');
  const afterRun = factor('afterRun');
  return {
    ...scale,
    lane: { ...lane, kv: lane.kv * kv, kvSlow: lane.kvSlow * kv, pulses: lane.pulses / pulse },
    afterRun: scale.afterRun * afterRun,
    priors: { ...priors, afterRun: priors.afterRun * afterRun },
  };
};

/** By how many unknowns a share of one value counts. */
const perShare = (scale: LaneScale, unknowns: Float64Array, lane: number, moves: Moved): number => {
  const values = laneValues(scale, unknowns, perLane * lane);
  if (moves === 'kv') return 1 / scale.priors.kv;
  if (moves === 'pulse') return (values.pulse * scale.lane.pulses) / scale.priors.pulse;
  return values.afterRun / scale.priors.afterRun;
};

/** All lanes together with these counts. */
const wholeRow = (presets: readonly number[]): RowSetup => ({
  lanes: presets.map((_, lane) => lane),
  presets,
  throttled: presets.map(() => false),
});

/** The lanes as the trials left them, on a floor; what is not known of another floor begins afresh. */
export const placed = (
  { model, fit }: EstimateBasis,
  { floor, allowances }: Place,
): { readonly model: RowModel; readonly unknowns: Float64Array; readonly same: boolean } => {
  const same = floor === model.floor;
  const scales = model.scales.map((scale, i) => {
    const there = shifted(scale, allowances);
    if (same) return there;
    const lane = floor.system.lanes.find(({ tag }) => tag === scale.lane.tag) ?? floor.system.lanes[i];
    if (lane === undefined) return there;
    const { outlet, levelAt, kv, kvSlow, changeOver } = lane;
    const slow = { kvSlow: kvSlow === kv ? there.lane.kv : (kvSlow / kv) * there.lane.kv, changeOver };
    const { levelAt: _, ...here } = there.lane;
    return {
      ...there,
      lane: { ...here, ...slow, outlet, ...(levelAt === undefined ? {} : { levelAt }) },
    };
  });
  const there: RowModel = same ? { ...model, scales } : { floor, scales, throttles: [] };
  const unknowns = new Float64Array(sizeOf(there));
  unknowns.set(same ? fit.unknowns : fit.unknowns.subarray(0, supplyAt(model)));
  return { model: there, unknowns, same };
};

/** Mean departure from the slopes and its variance, of each figure of a row. */
interface Departure {
  readonly shift: number;
  readonly variance: number;
}

export interface Departures {
  readonly volumes: readonly Departure[];
  readonly times: readonly Departure[];
  readonly rowTime: Departure;
  readonly stuckShare: number;
}

const departureOf = (departed: readonly number[]): Departure => {
  const count = Math.max(1, departed.length);
  const shift = departed.reduce((sum, each) => sum + each, 0) / count;
  return { shift, variance: departed.reduce((sum, each) => sum + (each - shift) ** 2, 0) / count };
};

/** Where an allowance may move the lanes. */
interface AllowanceLine {
  readonly line: Allowance;
  readonly lanes: readonly number[];
}

const linesOf = (allowances: readonly Allowance[], count: number): readonly AllowanceLine[] => {
  const all = Array.from({ length: count }, (_, lane) => lane);
  return allowances.flatMap((line) =>
    line.common ? [{ line, lanes: all }] : all.map((lane) => ({ line, lanes: [lane] })),
  );
};

/** What the slopes of a row can't see, by rows in which all that may be true is moved at once. */
const departuresOf = (
  basis: EstimateBasis,
  { model, unknowns, same }: ReturnType<typeof placed>,
  lines: readonly AllowanceLine[],
  setup: RowSetup,
  answer: RowAnswer,
  slopes: RowSlopes,
): Departures => {
  const own = same ? basis.fit.unknowns.length : supplyAt(model);
  const slowest = answer.times.indexOf(Math.max(...answer.times));
  const volumes = setup.lanes.map((): number[] => []);
  const times = setup.lanes.map((): number[] => []);
  const rowTime: number[] = [];
  const free = freeDimension(basis);
  let stuck = 0;
  basis.draws().forEach((pair, point) => {
    // what the trials say nothing of
    const apart = new Float64Array(unknowns.length);
    if (!same) for (let i = own; i < unknowns.length; i++) apart[i] = deviate(point, free + i - own);
    lines.forEach(({ line, lanes }, i) => {
      const y = deviate(point, free + unknowns.length - own + i) * line.deviation;
      for (const lane of lanes) {
        const column = perLane * lane + offsetOf[line.moves];
        apart[column] = apart[column]! + y * perShare(model.scales[lane]!, unknowns, lane, line.moves);
      }
    });
    pair.forEach(({ known, besides }, mirrored) => {
      const sign = mirrored === 0 ? 1 : -1;
      const move = apart.map((by, i) => sign * by + (i < own ? known[i]! : 0));
      const there = rowAnswer(
        model,
        setup,
        unknowns.map((x, i) => x + move[i]! + (i < own ? besides[i]! : 0)),
        0,
      );
      if (there === undefined) {
        stuck++;
        return;
      }
      setup.lanes.forEach((_, i) => {
        volumes[i]!.push(there.volumes[i]! - answer.volumes[i]! - dotOf(slopes.volumes[i]!, move));
        times[i]!.push(there.times[i]! - answer.times[i]! - dotOf(slopes.times[i]!, move));
      });
      rowTime.push(Math.max(...there.times) - answer.times[slowest]! - dotOf(slopes.times[slowest]!, move));
    });
  });
  return {
    volumes: volumes.map(departureOf),
    times: times.map(departureOf),
    rowTime: departureOf(rowTime),
    stuckShare: stuck / (2 * drawnPairs),
  };
};

/**
 * What a linear figure of the fit would lose of its variance if the share of the trials' own run were known.
 *
 * Method   (s' C e)^2/(e' C e), the part of s that goes with the unknown e
 */
const ofRunHere = ({ model, fit }: EstimateBasis, slope: Float64Array): number => {
  if (!model.floor.column?.ofRun) return 0;
  const row = fit.covariance.whole[runAt(model)]!;
  return dotOf(Float64Array.from(row), slope) ** 2 / row[runAt(model)]!;
};

/**
 * A row of bottles before it is filled: means and how far they may lie from the truth.
 *
 * Method   slopes of the row carry the covariance of the lanes' values; the supply's own unknowns and the allowances add
 *          to it. What the slopes can't see, lanes that change places in the order of closing and what bends, comes from
 *          rows in which all that may be true is moved at once, the orders that the trials leave open with it: their
 *          departure from the slopes shifts the mean and adds its variance
 * Symbols  near  departures at counts so near that they are the same; absent, they are worked out
 * Returns  undefined where a lane can never end
 * Cost     some sixty rows there, a dozen where the departures are known; once for each estimate, fifty of each set-up of
 *          its trials
 * Source   JCGM 100:2008, 5.2 for the slopes (memory); control variates for the rest
 */
export const rowForecast = (
  basis: EstimateBasis,
  place: Place,
  presets: readonly number[],
  near?: Departures,
): RowForecast | undefined => {
  const { fit } = basis;
  const there = placed(basis, place);
  const { model, unknowns, same } = there;
  const setup = wholeRow(presets);
  const answer = rowAnswer(model, setup, unknowns, 0);
  const slopes = answer === undefined ? undefined : rowSlopes(model, setup, unknowns, answer);
  if (answer === undefined || slopes === undefined) return undefined;
  const size = fit.unknowns.length;
  const own = same ? size : supplyAt(model);
  const slowest = answer.times.indexOf(Math.max(...answer.times));
  const lines = linesOf(place.allowances, presets.length);
  const departures = near ?? departuresOf(basis, there, lines, setup, answer, slopes);

  const figure = (
    value: number,
    slope: Float64Array,
    { shift, variance: order }: Departure,
  ): ForecastFigure => {
    const known = new Float64Array(size);
    known.set(slope.subarray(0, own));
    const told = figureParts(fit, known);
    let supply = 0;
    if (!same) for (let i = own; i < slope.length; i++) supply += slope[i]! * slope[i]!;
    let allowed = 0;
    for (const { line, lanes } of lines) {
      let moved = 0;
      for (const lane of lanes) {
        moved +=
          slope[perLane * lane + offsetOf[line.moves]]! *
          perShare(model.scales[lane]!, unknowns, lane, line.moves);
      }
      allowed += (moved * line.deviation) ** 2;
    }
    const ofRun = !same && model.floor.column?.ofRun ? slope[runAt(model)]! ** 2 : 0;
    const parts = [...told, ...[supply, allowed, order].map((variance) => ({ variance, dof: Infinity }))];
    const all = parts.reduce((sum, { variance }) => sum + variance, 0) || 1;
    return {
      value: value + shift,
      parts,
      causes: {
        volumes: told[0]!.variance / all,
        times: told[1]!.variance / all,
        before: told[2]!.variance / all,
        supply: supply / all,
        allowances: allowed / all,
        order: order / all,
      },
      slope: known,
      ofRuns: { here: ofRunHere(basis, known) / all, there: ofRun / all },
    };
  };
  return {
    answer,
    slopes,
    departures,
    volumes: presets.map((_, i) => figure(answer.volumes[i]!, slopes.volumes[i]!, departures.volumes[i]!)),
    times: presets.map((_, i) => figure(answer.times[i]!, slopes.times[i]!, departures.times[i]!)),
    rowTime: figure(answer.times[slowest]!, slopes.times[slowest]!, departures.rowTime),
    stuckShare: departures.stuckShare,
  };
};
