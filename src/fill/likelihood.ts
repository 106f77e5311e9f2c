import { addOuter, zeroMatrix } from '../statistics/cholesky.ts';
import { censored } from './censored.ts';
import { type Miss, type Noise, varianceOf } from './noise.ts';
import type { SetupReadings } from './readings.ts';
import type { RowAnswer, RowSlopes } from './row-model.ts';

export interface Normal {
  readonly prior: Float64Array[];
  readonly volumes: Float64Array[];
  readonly times: Float64Array[];
  readonly pull: Float64Array;
}

/** Curvature and slope of the likelihood where the unknowns stand. */
export const normalOf = (
  readings: readonly SetupReadings[],
  answers: readonly RowAnswer[],
  slopes: readonly RowSlopes[],
  unknowns: Float64Array,
  volumeNoise: Noise,
  timeNoise: Noise,
): Normal => {
  const size = unknowns.length;
  const prior = zeroMatrix(size);
  const volumes = zeroMatrix(size);
  const times = zeroMatrix(size);
  const pull = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    prior[i]![i] = 1;
    pull[i] = -unknowns[i]!;
  }
  const add = (into: Float64Array[], slope: Float64Array, weight: number, force: number): void => {
    if (weight > 0) addOuter(into, slope, weight);
    for (let i = 0; i < size; i++) pull[i] = pull[i]! + slope[i]! * force;
  };
  readings.forEach((each, s) => {
    const answer = answers[s]!;
    each.setup.lanes.forEach((_, i) => {
      let weight = 0;
      let force = 0;
      for (const { value, stated } of each.volumes[i]!) {
        const variance = varianceOf(volumeNoise, stated);
        weight += 1 / variance;
        force += (value - answer.volumes[i]!) / variance;
      }
      for (const { value, stated } of each.bounds[i]!) {
        const variance = varianceOf(volumeNoise, stated);
        const deviation = Math.sqrt(variance);
        const bound = censored(value, answer.volumes[i]!, deviation);
        weight += bound.weight / variance;
        force += bound.pull / deviation;
      }
      add(volumes, slopes[s]!.volumes[i]!, weight, force);
      weight = 0;
      force = 0;
      for (const { value, stated } of each.times[i]!) {
        const variance = varianceOf(timeNoise, stated);
        weight += 1 / variance;
        force += (value - answer.times[i]!) / variance;
      }
      add(times, slopes[s]!.times[i]!, weight, force);
    });
    for (const { value, stated } of each.pressures) {
      add(prior, slopes[s]!.pressure, 1 / stated, (value - answer.pressure) / stated);
    }
  });
  return { prior, volumes, times, pull };
};

/** Twice the negative logarithm of the posterior, but for a constant. */
export const objectiveOf = (
  readings: readonly SetupReadings[],
  answers: readonly RowAnswer[],
  unknowns: Float64Array,
  volumeNoise: Noise,
  timeNoise: Noise,
): number => {
  let sum = 0;
  for (const x of unknowns) sum += x * x;
  readings.forEach((each, s) => {
    const answer = answers[s]!;
    each.setup.lanes.forEach((_, i) => {
      for (const { value, stated } of each.volumes[i]!) {
        sum += (value - answer.volumes[i]!) ** 2 / varianceOf(volumeNoise, stated);
      }
      for (const { value, stated } of each.bounds[i]!) {
        const variance = varianceOf(volumeNoise, stated);
        const short = value - answer.volumes[i]!;
        // a bound that is met costs nearly nothing, one that is not nearly its square
        if (short > 0) sum += (short * short) / variance;
      }
      for (const { value, stated } of each.times[i]!) {
        sum += (value - answer.times[i]!) ** 2 / varianceOf(timeNoise, stated);
      }
    });
    for (const { value, stated } of each.pressures) sum += (value - answer.pressure) ** 2 / stated;
  });
  return sum;
};

export const missesOf = (
  readings: readonly SetupReadings[],
  answers: readonly RowAnswer[],
  of: 'volumes' | 'times',
): readonly Miss[] => {
  const misses: Miss[] = [];
  readings.forEach((each, s) => {
    each[of].forEach((list, i) => {
      const mean = answers[s]![of][i]!;
      for (const { value, stated } of list) misses.push({ miss: value - mean, stated });
    });
  });
  return misses;
};

/** Bottles that were weighed whole, and what those that overflowed stand for beside them. */
export const volumeCount = (
  readings: readonly SetupReadings[],
  answers: readonly RowAnswer[],
  noise: Noise,
): number => {
  let count = 0;
  readings.forEach((each, s) => {
    each.setup.lanes.forEach((_, i) => {
      count += each.volumes[i]!.length;
      for (const { value, stated } of each.bounds[i]!) {
        const deviation = Math.sqrt(varianceOf(noise, stated));
        count -= censored(value, answers[s]!.volumes[i]!, deviation).square;
      }
    });
  });
  return count;
};
