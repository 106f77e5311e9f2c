import { cholesky } from '../statistics/cholesky.ts';
import { normalQuantile } from '../statistics/normal.ts';
import { jitterLast } from './fit.ts';
import type { DrawnLanes, EstimateBasis } from './lane-estimate.ts';
import { offsetOf, perLane } from './lane-unknowns.ts';
import { otherOrders } from './other-orders.ts';
import { rowAnswer } from './row-model.ts';

/** Half of the draws; each is taken with its mirror image. */
export const drawnPairs = 24;

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

/** Standard normal. */
export const deviate = (point: number, dimension: number): number =>
  normalQuantile(Math.min(0.999, Math.max(0.001, evenly(point, dimension))));

export const dotOf = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
};

/**
 * What the after-runs must be where other values of the lanes change the order in which they closed in the trials: the
 * volumes that were weighed stay as they are, and a lane that closed beside more open ones had a longer after-run.
 *
 * Method   the volumes of the trials' rows where the unknowns are moved, less what the slopes make of the move; the mean
 *          over the rows, bottle by bottle, over the flow at the count
 * Returns  by lane, in units of its unknown; nothing where the move lets a lane of the trials never end
 */
const heldToTrials = (
  { model, fit, readings }: Pick<EstimateBasis, 'model' | 'fit' | 'readings'>,
  move: Float64Array,
): Float64Array => {
  const missed = new Float64Array(model.scales.length);
  const flowed = new Float64Array(model.scales.length);
  const moved = fit.unknowns.map((x, i) => x + move[i]!);
  readings.forEach(({ setup, volumes }, row) => {
    const there = rowAnswer(model, setup, moved, jitterLast);
    if (there === undefined) return;
    setup.lanes.forEach((lane, i) => {
      const bottles = volumes[i]!.length;
      const linear = dotOf(fit.slopes[row]!.volumes[i]!, move);
      missed[lane] = missed[lane]! + bottles * (there.volumes[i]! - fit.answers[row]!.volumes[i]! - linear);
      flowed[lane] = flowed[lane]! + bottles * there.flows[i]!;
    });
  });
  return missed.map((miss, lane) =>
    flowed[lane]! > 0 ? -miss / (flowed[lane]! * model.scales[lane]!.priors.afterRun) : 0,
  );
};

/**
 * All that may be true of the lanes, moved at once: pairs of draws that mirror each other.
 *
 * Method   evenly spread normal deviates through the root of the covariance; orders of closing that the trials leave open
 *          by their chance; after-runs held to the volumes that were weighed
 * Cost     a row of each set-up of the trials for each draw; they hang on the estimate alone, so that all that is foretold
 *          from it shares them
 */
export const drawnLanes = (
  basis: Pick<EstimateBasis, 'model' | 'fit' | 'readings'>,
): readonly (readonly [DrawnLanes, DrawnLanes])[] => {
  const { fit } = basis;
  const size = fit.unknowns.length;
  const lower = cholesky(fit.covariance.whole)!;
  const orders = otherOrders(basis);
  return Array.from({ length: drawnPairs }, (_, point) => {
    const z = Float64Array.from({ length: size }, (_, i) => deviate(point, i));
    const known = new Float64Array(size);
    for (let i = 0; i < size; i++) {
      for (let k = 0; k <= i; k++) known[i] = known[i]! + lower[i]![k]! * z[k]!;
    }
    const drawn = (sign: 1 | -1): DrawnLanes => {
      const own = known.map((x) => sign * x);
      const besides = new Float64Array(size);
      orders.forEach(({ move, chance }, i) => {
        const place = evenly(point, size + i);
        if ((sign > 0 ? place : 1 - place) >= chance) return;
        for (const [at, by] of move) besides[at] = besides[at]! + by;
      });
      const held = heldToTrials(
        basis,
        own.map((x, i) => x + besides[i]!),
      );
      held.forEach((by, lane) => {
        const at = perLane * lane + offsetOf.afterRun;
        besides[at] = besides[at]! + by;
      });
      return { known: own, besides };
    };
    return [drawn(1), drawn(-1)] as const;
  });
};

/** The first dimension of the draws that is free for what another floor leaves open. */
export const freeDimension = ({ fit, model }: Pick<EstimateBasis, 'fit' | 'model'>): number =>
  fit.unknowns.length + model.scales.length;
