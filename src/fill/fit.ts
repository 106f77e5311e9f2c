import {
  addOuter,
  cholesky,
  choleskyInverse,
  choleskySolve,
  type Symmetric,
  zeroMatrix,
} from '../statistics/cholesky.ts';
import { censored } from './censored.ts';
import { offsetOf, perLane } from './lane-unknowns.ts';
import { type Miss, type Noise, noiseOf, varianceOf } from './noise.ts';
import {
  type RowAnswer,
  type RowModel,
  type RowSetup,
  type RowSlopes,
  rowAnswer,
  rowSlopes,
  sizeOf,
} from './row-model.ts';

/** A reading of one trial. */
export interface Reading {
  readonly trial: number;
  readonly value: number;
  /** Square of its standard uncertainty. */
  readonly stated: number;
}

/** What was read of one set-up, by lane of its row. */
export interface SetupReadings {
  readonly setup: RowSetup;
  readonly volumes: readonly (readonly Reading[])[];
  /** Volumes that the bottle got at least. */
  readonly bounds: readonly (readonly Reading[])[];
  readonly times: readonly (readonly Reading[])[];
  readonly pressures: readonly Reading[];
}

/** Variances that hold before the readings have told of their own. */
export interface NoiseGround {
  /** m6 */
  readonly volumeLeast: number;
  readonly volumeTypical: number;
  /** s2 */
  readonly timeTypical: number;
}

/** Where a quantity's uncertainty comes from; all of one size, over the unknowns. */
export interface CovarianceParts {
  /** All of it. */
  readonly whole: Symmetric;
  /** What the scatter of volumes and that of times puts into it; the rest is what was known before. */
  readonly fromVolumes: Symmetric;
  readonly fromTimes: Symmetric;
}

export interface Fit {
  readonly unknowns: Float64Array;
  readonly covariance: CovarianceParts;
  readonly volumeNoise: Noise;
  readonly timeNoise: Noise;
  readonly answers: readonly RowAnswer[];
  readonly slopes: readonly RowSlopes[];
}

/** Steps after which a fit that still moves is taken as it stands: it then hops between two orders of closing. */
const mostSteps = 12;
/** A step shorter than this share of each unknown's own uncertainty changes no figure. */
const shortStep = 2e-3;
/** A step further than this many prior deviations is cut: beyond it the slopes say nothing. */
const longStep = 1.5;
/** Within this many prior deviations the slopes stay what they were. */
const nearStep = 0.1;
const mostHalvings = 4;
/**
 * Which of two lanes ends first is left open over this time at the start, so that the fit can't hang on a wrong order, and
 * at the end over what the phase of a pulse leaves open in a real row, s.
 */
const jitterFirst = 0.1;
const jitterLast = 0.01;
const jitterFall = 0.5;

interface Normal {
  readonly prior: Float64Array[];
  readonly volumes: Float64Array[];
  readonly times: Float64Array[];
  readonly pull: Float64Array;
}

/** Curvature and slope of the likelihood where the unknowns stand. */
const normalOf = (
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
const objectiveOf = (
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

const sumOf = (...matrices: readonly Symmetric[]): Float64Array[] =>
  matrices[0]!.map((row, i) => {
    const sum = Float64Array.from(row);
    for (const other of matrices.slice(1)) {
      for (let j = 0; j <= i; j++) sum[j] = sum[j]! + other[i]![j]!;
    }
    return sum;
  });

/** Sum of the entries of A times those of a matrix of which only the lower triangle is kept. */
const traceOf = (a: Symmetric, lower: Symmetric): number => {
  let trace = 0;
  lower.forEach((row, i) => {
    for (let j = 0; j < i; j++) trace += 2 * row[j]! * a[i]![j]!;
    trace += row[i]! * a[i]![i]!;
  });
  return trace;
};

/** A H A, of which H is kept as a lower triangle. */
const between = (a: Symmetric, lower: Symmetric): Float64Array[] => {
  const n = a.length;
  const half = zeroMatrix(n);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < n; k++) {
      const h = i >= k ? lower[i]![k]! : lower[k]![i]!;
      if (h === 0) continue;
      const row = a[k]!;
      const into = half[i]!;
      for (let j = 0; j < n; j++) into[j] = into[j]! + h * row[j]!;
    }
  }
  const whole = zeroMatrix(n);
  for (let i = 0; i < n; i++) {
    for (let k = 0; k < n; k++) {
      const f = a[i]![k]!;
      if (f === 0) continue;
      const row = half[k]!;
      const into = whole[i]!;
      for (let j = 0; j < n; j++) into[j] = into[j]! + f * row[j]!;
    }
  }
  return whole;
};

const missesOf = (
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
const volumeCount = (
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

/** Rounds in which the lanes are brought to the order in which they were seen to end. */
const startRounds = 3;

/**
 * Where the fit starts: each lane's Kv moved by the ratio of the time that it takes to the time that was read. From lanes
 * that are all alike, as a book has them, the slopes of the order of closing say nothing.
 */
const startOf = (model: RowModel, readings: readonly SetupReadings[]): Float64Array => {
  const unknowns = new Float64Array(sizeOf(model));
  for (let round = 0; round < startRounds; round++) {
    const ratios = model.scales.map(() => ({ sum: 0, count: 0 }));
    for (const { setup, times } of readings) {
      const answer = rowAnswer(model, setup, unknowns, 0);
      if (answer === undefined) return new Float64Array(sizeOf(model));
      setup.lanes.forEach((lane, i) => {
        const read = times[i]!;
        if (read.length === 0 || setup.throttled[i]) return;
        const mean = read.reduce((sum, { value }) => sum + value, 0) / read.length;
        const ratio = ratios[lane]!;
        ratio.sum += read.length * Math.log(answer.times[i]! / mean);
        ratio.count += read.length;
      });
    }
    model.scales.forEach(({ priors }, lane) => {
      const { sum, count } = ratios[lane]!;
      const at = perLane * lane + offsetOf.kv;
      const by = count > 0 ? sum / count / priors.kv : 0;
      unknowns[at] = unknowns[at]! + Math.max(-longStep, Math.min(longStep, by));
    });
  }
  return unknowns;
};

/**
 * The lanes' values that explain what was read, and how well they are known.
 *
 * Method   Gauss-Newton on the posterior: weighted squares of the readings, the likelihood of bottles that got at least
 *          so much, and what was known before as one unit of weight for each unknown. The variances of volumes and
 *          times are estimated along with it, with the degrees of freedom that the unknowns have left
 * Returns  undefined where a lane can never end on this floor
 * Cost     a few times the slopes of every set-up; nothing that grows with the bottles but their sums
 * Source   G. A. F. Seber, C. J. Wild, Nonlinear Regression, chapters 2 and 14 (memory)
 */
export const fitLanes = (
  model: RowModel,
  readings: readonly SetupReadings[],
  ground: NoiseGround,
): Fit | undefined => {
  const answersAt = (unknowns: Float64Array, jitter: number): readonly RowAnswer[] | undefined => {
    const answers: RowAnswer[] = [];
    for (const { setup } of readings) {
      const answer = rowAnswer(model, setup, unknowns, jitter);
      if (answer === undefined) return undefined;
      answers.push(answer);
    }
    return answers;
  };
  // where a row could be filled its slopes can be taken
  const slopesAt = (unknowns: Float64Array): readonly RowSlopes[] =>
    readings.map(({ setup }) => rowSlopes(model, setup, unknowns)!);
  let unknowns = startOf(model, readings);
  let jitter = jitterFirst;
  let answers = answersAt(unknowns, jitter);
  if (answers === undefined) return undefined;
  let volumeNoise: Noise = { own: Math.max(ground.volumeLeast, ground.volumeTypical), scale: 1, dof: 1 };
  let timeNoise: Noise = { own: ground.timeTypical, scale: 1, dof: 1 };
  let slopes: readonly RowSlopes[] = [];
  let stale = true;
  for (let steps = 0; ; steps++) {
    if (stale) slopes = slopesAt(unknowns);
    const normal = normalOf(readings, answers, slopes, unknowns, volumeNoise, timeNoise);
    // one unit of prior weight for each unknown keeps it positive definite
    const lower = cholesky(sumOf(normal.prior, normal.volumes, normal.times))!;
    const whole = choleskyInverse(lower);
    const move = choleskySolve(lower, normal.pull);
    let far = 0;
    let longest = 0;
    move.forEach((by, i) => {
      far = Math.max(far, Math.abs(by) / Math.sqrt(whole[i]![i]!));
      longest = Math.max(longest, Math.abs(by));
    });
    const before = { volumeNoise, timeNoise };
    const timed = readings.reduce((n, each) => n + each.times.reduce((m, of) => m + of.length, 0), 0);
    const weighed = volumeCount(readings, answers, volumeNoise);
    const settle = (): void => {
      volumeNoise = noiseOf(
        missesOf(readings, answers!, 'volumes'),
        weighed - traceOf(whole, normal.volumes),
        ground.volumeLeast,
        ground.volumeTypical,
      );
      timeNoise = noiseOf(
        missesOf(readings, answers!, 'times'),
        timed - traceOf(whole, normal.times),
        0,
        ground.timeTypical,
      );
    };
    if ((far < shortStep && jitter <= jitterLast) || steps >= mostSteps) {
      settle();
      const same =
        Math.abs(volumeNoise.own * volumeNoise.scale - before.volumeNoise.own * before.volumeNoise.scale) <
          0.01 * volumeNoise.own * volumeNoise.scale &&
        Math.abs(timeNoise.own * timeNoise.scale - before.timeNoise.own * before.timeNoise.scale) <=
          0.01 * timeNoise.own * timeNoise.scale;
      if (same || steps >= mostSteps) {
        return {
          unknowns,
          covariance: {
            whole,
            fromVolumes: between(whole, normal.volumes),
            fromTimes: between(whole, normal.times),
          },
          volumeNoise,
          timeNoise,
          answers,
          slopes,
        };
      }
    }
    stale = longest > nearStep;
    const here = objectiveOf(readings, answers, unknowns, volumeNoise, timeNoise);
    let share = Math.min(1, longStep / longest);
    for (let halved = 0; halved <= mostHalvings; halved++, share *= 0.5) {
      const there = unknowns.map((x, i) => x + share * move[i]!);
      const found = answersAt(there, jitter);
      if (found === undefined) continue;
      const better = objectiveOf(readings, found, there, volumeNoise, timeNoise) < here * (1 + 1e-9) + 1e-9;
      if (!better && halved < mostHalvings) continue;
      if (better) {
        unknowns = there;
        answers = found;
      }
      break;
    }
    settle();
    if (jitter > jitterLast) {
      jitter = Math.max(jitterLast, jitterFall * jitter);
      answers = answersAt(unknowns, jitter)!;
    }
  }
};
