import { cholesky, choleskyInverse, choleskySolve, type Symmetric } from '../statistics/cholesky.ts';
import { between, sumOf, traceOf } from '../statistics/symmetric.ts';
import { fitStart } from './fit-start.ts';
import { missesOf, normalOf, objectiveOf, volumeCount } from './likelihood.ts';
import { type Noise, noiseOf } from './noise.ts';
import type { SetupReadings } from './readings.ts';
import { type RowAnswer, type RowModel, type RowSlopes, rowAnswer, rowSlopes } from './row-model.ts';

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
export const jitterLast = 0.01;
const jitterFall = 0.5;

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
  let unknowns = fitStart(model, readings);
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
