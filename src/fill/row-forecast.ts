import { cholesky } from '../statistics/cholesky.ts';
import { normalQuantile } from '../statistics/normal.ts';
import type { Allowance, Moved } from './allowances.ts';
import { jitterLast } from './fit.ts';
import type { EstimateBasis } from './lane-estimate.ts';
import { type LaneScale, laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { figureParts } from './linear-figure.ts';
import { otherOrders } from './other-orders.ts';
import { type RowAnswer, type RowModel, rowAnswer, rowSlopes, sizeOf, supplyAt } from './row-model.ts';
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
  /** By lane. */
  readonly volumes: readonly ForecastFigure[];
  readonly times: readonly ForecastFigure[];
  /** The slowest lane. */
  readonly rowTime: ForecastFigure;
  /** Share of what may be true in which some lane never ends. */
  readonly stuckShare: number;
}

/** Half of the trials of what may be true; each is taken with its mirror image. */
const pairs = 24;

/** Points that fill a space of any dimension evenly, and the same ones every time: fractional parts of i sqrt(prime). */
const roots = ((): readonly number[] => {
  const found: number[] = [];
  for (let n = 2; found.length < 80; n++) {
    if (found.every((root) => n % Math.round(root * root) !== 0)) found.push(Math.sqrt(n));
  }
  return found;
})();

/** Evenly from 0 to 1. */
const evenly = (point: number, dimension: number): number => {
  const place = (point + 1) * roots[dimension % roots.length]! + 0.37 * dimension;
  return place - Math.floor(place);
};

const deviate = (point: number, dimension: number): number =>
  normalQuantile(Math.min(0.999, Math.max(0.001, evenly(point, dimension))));

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

/**
 * What the after-runs must be where other values of the lanes change the order in which they closed in the trials: the
 * volumes that were weighed stay as they are, and a lane that closed beside more open ones had a longer after-run.
 *
 * Method   the volumes of the trials' rows where the unknowns are moved, less what the slopes make of the move; the mean
 *          over the rows, bottle by bottle, over the flow at the count
 * Returns  by lane, in units of its unknown; nothing where the move lets a lane of the trials never end
 */
const heldToTrials =
  ({ model, fit, readings }: EstimateBasis) =>
  (move: Float64Array): Float64Array => {
    const missed = new Float64Array(model.scales.length);
    const flowed = new Float64Array(model.scales.length);
    readings.forEach(({ setup, volumes }, row) => {
      const there = rowAnswer(
        model,
        setup,
        fit.unknowns.map((x, i) => x + move[i]!),
        jitterLast,
      );
      if (there === undefined) return;
      setup.lanes.forEach((lane, i) => {
        const bottles = volumes[i]!.length;
        const slope = fit.slopes[row]!.volumes[i]!;
        const linear = slope.reduce((sum, each, k) => sum + each * move[k]!, 0);
        missed[lane] = missed[lane]! + bottles * (there.volumes[i]! - fit.answers[row]!.volumes[i]! - linear);
        flowed[lane] = flowed[lane]! + bottles * there.flows[i]!;
      });
    });
    return missed.map((miss, lane) =>
      flowed[lane]! > 0 ? -miss / (flowed[lane]! * model.scales[lane]!.priors.afterRun) : 0,
    );
  };

/** All lanes together with these counts. */
const wholeRow = (presets: readonly number[]) => ({
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

/**
 * A row of bottles before it is filled: means and how far they may lie from the truth.
 *
 * Method   slopes of the row carry the covariance of the lanes' values; the supply's own unknowns and the allowances add
 *          to it. What the slopes can't see, lanes that change places in the order of closing and what bends, comes from
 *          rows in which all that may be true is moved at once, the orders that the trials leave open with it: their
 *          departure from the slopes shifts the mean and adds its variance
 * Returns  undefined where a lane can never end
 * Cost     some sixty rows there, and fifty of each set-up of the trials
 * Source   JCGM 100:2008, 5.2 for the slopes (memory); control variates for the rest
 */
export const rowForecast = (
  basis: EstimateBasis,
  place: Place,
  presets: readonly number[],
): RowForecast | undefined => {
  const { fit } = basis;
  const { model, unknowns, same } = placed(basis, place);
  const setup = wholeRow(presets);
  const answer = rowAnswer(model, setup, unknowns, 0);
  const slopes = rowSlopes(model, setup, unknowns);
  if (answer === undefined || slopes === undefined) return undefined;
  const size = fit.unknowns.length;
  const own = same ? size : supplyAt(model);
  const slowest = answer.times.indexOf(Math.max(...answer.times));

  // all that may be true, moved at once
  const lower = cholesky(fit.covariance.whole)!;
  const lines = place.allowances.flatMap((line) =>
    line.common ? [{ line, lanes: presets.map((_, i) => i) }] : presets.map((_, i) => ({ line, lanes: [i] })),
  );
  const linear = (slope: Float64Array, move: Float64Array): number =>
    slope.reduce((sum, each, i) => sum + each * move[i]!, 0);
  const departures = {
    volumes: presets.map((): number[] => []),
    times: presets.map((): number[] => []),
    rowTime: [] as number[],
  };
  const held = heldToTrials(basis);
  const orders = otherOrders(basis);
  let stuck = 0;
  const tries = 2 * pairs;
  for (let point = 0; point < pairs; point++) {
    const z = Array.from({ length: size }, (_, i) => deviate(point, i));
    // what the trials know of, their own supply with it
    const known = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      for (let k = 0; k <= i; k++) known[i] = known[i]! + lower[i]![k]! * z[k]!;
    }
    const move = new Float64Array(unknowns.length);
    move.set(known.subarray(0, own));
    if (!same) for (let i = own; i < unknowns.length; i++) move[i] = deviate(point, size + i - own);
    lines.forEach(({ line, lanes }, i) => {
      const y = deviate(point, size + unknowns.length + i) * line.deviation;
      for (const lane of lanes) {
        const column = perLane * lane + offsetOf[line.moves];
        move[column] = move[column]! + y * perShare(model.scales[lane]!, unknowns, lane, line.moves);
      }
    });
    for (const sign of [1, -1]) {
      const moved = unknowns.map((x, i) => x + sign * move[i]!);
      const inTrials = known.map((x) => sign * x);
      orders.forEach(({ move: exchange, chance }, i) => {
        const drawn = evenly(point, size + unknowns.length + lines.length + i);
        if ((sign > 0 ? drawn : 1 - drawn) >= chance) return;
        for (const [at, by] of exchange) {
          inTrials[at] = inTrials[at]! + by;
          moved[at] = moved[at]! + by;
        }
      });
      held(inTrials).forEach((by, lane) => {
        const column = perLane * lane + offsetOf.afterRun;
        moved[column] = moved[column]! + by;
      });
      const there = rowAnswer(model, setup, moved, 0);
      if (there === undefined) {
        stuck++;
        continue;
      }
      presets.forEach((_, i) => {
        departures.volumes[i]!.push(
          there.volumes[i]! - answer.volumes[i]! - sign * linear(slopes.volumes[i]!, move),
        );
        departures.times[i]!.push(there.times[i]! - answer.times[i]! - sign * linear(slopes.times[i]!, move));
      });
      departures.rowTime.push(
        Math.max(...there.times) - answer.times[slowest]! - sign * linear(slopes.times[slowest]!, move),
      );
    }
  }

  const figure = (value: number, slope: Float64Array, departed: readonly number[]): ForecastFigure => {
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
    const count = Math.max(1, departed.length);
    const shift = departed.reduce((sum, each) => sum + each, 0) / count;
    const order = departed.reduce((sum, each) => sum + (each - shift) ** 2, 0) / count;
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
    };
  };
  return {
    answer,
    volumes: presets.map((_, i) => figure(answer.volumes[i]!, slopes.volumes[i]!, departures.volumes[i]!)),
    times: presets.map((_, i) => figure(answer.times[i]!, slopes.times[i]!, departures.times[i]!)),
    rowTime: figure(answer.times[slowest]!, slopes.times[slowest]!, departures.rowTime),
    stuckShare: stuck / tries,
  };
};
