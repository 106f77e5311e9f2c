import type { EstimateBasis } from './lane-estimate.ts';
import { laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { rowAnswer } from './row-model.ts';

/** Two lanes that may have closed the other way round in the trials, as far as these can tell. */
export interface OtherOrder {
  /** What of the unknowns is then another, in their own units. */
  readonly move: ReadonlyMap<number, number>;
  /** Chance of it, by what was known of the lanes before. */
  readonly chance: number;
}

/** Orders less likely than this change no figure. */
const leastChance = 0.01;
/** A watch that never errs, and a lane that nobody timed, s2. */
const leastVariance = 1e-8;
const untimed = 1;

/**
 * Pairs of lanes whose order of closing the trials leave open.
 *
 * Method   a lane that shuts beside one more open lane has less flow, and the volume that was weighed then takes a longer
 *          after-run; with the time of its end as it was read its count lies earlier by as much. Two neighbours in the order
 *          may be exchanged where the counts so moved stand in the other order, or lack of it no more than a watch may have
 *          missed: both fit the same readings. The chance of each is that of its values by the book's spreads
 * Assumes  neighbours alone; the flow of a lane in proportion to its valve coefficient
 * Cost     a row for each pair of neighbours
 * Source   derived
 */
export const otherOrders = ({
  model,
  fit,
  readings,
}: Pick<EstimateBasis, 'model' | 'fit' | 'readings'>): readonly OtherOrder[] => {
  const fullest = readings.reduce(
    (best, each) => (each.setup.lanes.length > (best?.setup.lanes.length ?? 0) ? each : best),
    readings[0],
  );
  if (fullest === undefined) return [];
  const { setup } = fullest;
  const answer = rowAnswer(model, setup, fit.unknowns, 0);
  if (answer === undefined) return [];
  const { ends, flows } = answer;
  const inOrder = ends.map((_, place) => place).toSorted((a, b) => ends[a]! - ends[b]!);
  const { own, scale } = fit.timeNoise;
  /** Variance of a lane's mean time, s2. */
  const watched = (lane: number): number => {
    let weight = 0;
    for (const { setup: of, times } of readings) {
      of.lanes.forEach((each, place) => {
        if (each !== lane) return;
        for (const { stated } of times[place]!) weight += 1 / Math.max(leastVariance, scale * (own + stated));
      });
    }
    return 1 / Math.max(weight, 1 / untimed);
  };
  return inOrder.slice(1).flatMap((later, i): readonly OtherOrder[] => {
    const earlier = inOrder[i]!;
    const exchanged = ends.map((end, place) =>
      place === later ? ends[earlier]! : place === earlier ? ends[later]! : end,
    );
    const other = rowAnswer(model, setup, fit.unknowns, exchanged);
    if (other === undefined) return [];
    const move = new Map<number, number>();
    let unlikelier = 0;
    const counts = [earlier, later].map((place) => {
      const lane = setup.lanes[place]!;
      const scale = model.scales[lane]!;
      const { afterRun } = laneValues(scale, fit.unknowns, perLane * lane);
      const longer = afterRun * (flows[place]! / other.flows[place]! - 1);
      const kv = perLane * lane + offsetOf.kv;
      const tau = perLane * lane + offsetOf.afterRun;
      const faster = longer / ends[place]! / scale.priors.kv;
      move.set(kv, faster);
      for (const [at, by] of [
        [kv, faster],
        [tau, longer / scale.priors.afterRun],
      ] as const) {
        const before = fit.unknowns[at]!;
        unlikelier += (before + by) ** 2 - before ** 2;
      }
      return ends[place]! - longer;
    });
    // what is then still wanting to the other order must be a miss of the watch
    const wanting = Math.max(0, counts[1]! - counts[0]!);
    const seen = [earlier, later].map((place) => watched(setup.lanes[place]!));
    const together = seen[0]! + seen[1]!;
    const chance = 1 / (1 + Math.exp(0.5 * (unlikelier + wanting ** 2 / together)));
    if (!(chance > leastChance)) return [];
    [earlier, later].forEach((place, i) => {
      const lane = setup.lanes[place]!;
      const kv = perLane * lane + offsetOf.kv;
      const share = (wanting * seen[i]!) / together;
      const sooner = i === 0 ? -share : share;
      move.set(kv, move.get(kv)! + sooner / ends[place]! / model.scales[lane]!.priors.kv);
    });
    return [{ move, chance }];
  });
};
