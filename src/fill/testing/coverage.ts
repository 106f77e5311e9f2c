import { normalQuantile } from '../../statistics/normal.ts';
import { studentQuantile } from '../../statistics/student.ts';
import { estimateLanes } from '../estimate-lanes.ts';
import { predictOtherFloor } from '../predict-other-floor.ts';
import type { Within } from '../student-sum.ts';
import { floorPair, type PairOptions, trueRow } from './floor-pair.ts';
import { leastWidths } from './least-width.ts';
import { type Random, randomFrom } from './random.ts';

/** How intervals for the other floor did over pairs of floors with a known truth. */
export interface Coverage {
  readonly pairs: number;
  readonly lanes: number;
  readonly volumeInside: number;
  readonly timeInside: number;
  /** Mean half width over that of Cramer and Rao, the latter times Student's over the normal quantile. */
  readonly volumeWidth: number;
  readonly timeWidth: number;
}

const confidence = 0.9;

/** Pairs of one kind; every lane counts. The bound of Cramer and Rao is dear: it is worked out for the first pairs. */
export const coverageOf = (
  options: PairOptions,
  pairs: number,
  seed: number,
  pairOf: (random: Random, options: PairOptions) => ReturnType<typeof floorPair> = floorPair,
  measuredPairs = 30,
): Coverage => {
  const random = randomFrom(seed);
  const sums = { lanes: 0, volumeInside: 0, timeInside: 0, volume: 0, time: 0, volumeLeast: 0, timeLeast: 0 };
  for (let i = 0; i < pairs; i++) {
    const pair = pairOf(random, options);
    const answer = estimateLanes({ floor: pair.here, trials: pair.trials });
    if (answer.kind !== 'estimate') throw new Error(answer.problems[0]?.code);
    const prediction = predictOtherFloor({
      estimate: answer.estimate,
      floor: pair.there,
      presets: pair.presets,
      ...(pair.allowances === undefined ? {} : { allowances: pair.allowances }),
      confidence,
    });
    if (prediction === undefined) throw new Error('no row there');
    const truth = trueRow(pair.productThere ?? pair.trueThere, pair.presets, pair.truth);
    const least = i < measuredPairs ? leastWidths(pair) : undefined;
    const holds = ({ lower, upper }: Within, value: number): number =>
      value >= lower && value <= upper ? 1 : 0;
    const student = ({ dof }: Within): number =>
      studentQuantile(0.5 + 0.5 * confidence, dof) / normalQuantile(0.5 + 0.5 * confidence);
    prediction.lanes.forEach(({ volume, time }, lane) => {
      sums.lanes++;
      sums.volumeInside += holds(volume, truth.volumes[lane]!);
      sums.timeInside += holds(time, truth.times[lane]!);
      if (least === undefined) return;
      const z = normalQuantile(0.5 + 0.5 * confidence);
      // as shares, so that a large bottle counts no more than a small one
      sums.volume += (volume.upper - volume.lower) / (2 * z) / volume.value;
      sums.time += (time.upper - time.lower) / (2 * z) / time.value;
      sums.volumeLeast += (least.volumes[lane]! * student(volume)) / volume.value;
      sums.timeLeast += (least.times[lane]! * student(time)) / time.value;
    });
  }
  return {
    pairs,
    lanes: sums.lanes,
    volumeInside: sums.volumeInside / sums.lanes,
    timeInside: sums.timeInside / sums.lanes,
    volumeWidth: sums.volume / sums.volumeLeast,
    timeWidth: sums.time / sums.timeLeast,
  };
};
