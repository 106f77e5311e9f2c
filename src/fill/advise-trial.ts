import type { Allowance } from './allowances.ts';
import { dotOf } from './drawn-lanes.ts';
import type { LanesEstimate } from './estimate-lanes.ts';
import { laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { type ForecastFigure, type RowForecast, rowForecast } from './row-forecast.ts';
import { type RowAnswer, type RowSlopes, rowAnswer, rowSlopes } from './row-model.ts';
import type { UncertainFloor } from './uncertain-floor.ts';

export interface AdviceInput {
  readonly estimate: LanesEstimate;
  /** What is to be known better: the mean volume and time of each lane with these counts on this floor. */
  readonly floor: UncertainFloor;
  readonly presets: readonly number[];
  readonly allowances?: readonly Allowance[];
  /** What a bottle holds to its level, m3: a trial that would run over wants a larger vessel. */
  readonly capacity?: number;
  /** With these counts there, where it is known already. */
  readonly forecast?: RowForecast | undefined;
  /** Bottles of one trial; 3 where it is left out. */
  readonly bottles?: number;
}

/** A trial that could be made next, and what it would be worth. */
export interface TrialAdvice {
  readonly lane: string;
  readonly preset: number;
  readonly throttled: boolean;
  /** It would run over: it wants a larger vessel on the scale. */
  readonly largeVessel: boolean;
  readonly bottles: number;
  /** Standard deviation of the lane's volume there, m3, now and after the trial. */
  readonly volumeNow: number;
  readonly volumeThen: number;
  /** The same of its time, s. */
  readonly timeNow: number;
  readonly timeThen: number;
  /** By how much the intervals of all lanes together become narrower, as a share. */
  readonly narrower: number;
}

const usualBottles = 3;
/** Counts to try, over those that are to be used there. */
const shares = [0.4, 0.7, 1, 1.3] as const;
/** A lane throttled to half of its flow. */
const throttle = 0.5;

/** How readings of a lane move with the unknowns at another count, from those at a count that was computed. */
const slopesAt = (
  estimate: LanesEstimate,
  lane: number,
  base: { readonly answer: RowAnswer; readonly slopes: RowSlopes; readonly preset: number },
  preset: number,
  throttled: boolean,
): { readonly volume: Float64Array; readonly time: Float64Array | undefined } => {
  const { model } = estimate.basis;
  const { priors, lane: book, phaseCounts } = model.scales[lane]!;
  const flow = base.answer.flows[lane]! * (throttled ? throttle : 1);
  const at = perLane * lane;
  const volume = Float64Array.from(base.slopes.volumes[lane]!);
  volume[at + offsetOf.pulse] = ((preset - phaseCounts) * priors.pulse) / book.pulses;
  volume[at + offsetOf.afterRun] = flow * priors.afterRun;
  // how far it was throttled is known from its time alone, which then tells of nothing else
  if (throttled) {
    volume[at + offsetOf.kv] = 0;
    return { volume, time: undefined };
  }
  const time = Float64Array.from(base.slopes.times[lane]!);
  const longer = preset / base.preset;
  for (let i = 0; i < time.length; i++) time[i] = time[i]! * longer;
  time[at + offsetOf.pulse] = ((preset - phaseCounts) * priors.pulse) / book.pulses / flow;
  time[at + offsetOf.afterRun] = priors.afterRun;
  time[at + offsetOf.halfClosing] = priors.halfClosing;
  return { volume, time };
};

/**
 * Which trial next narrows the answer on the other floor most.
 *
 * Method   a trial with slopes j and variance s^2 takes (g'A j)^2/(s^2 + j'A j) off the variance of an answer with slopes g;
 *          volume first, then time. Slopes at other counts follow from one row: flows do not hang on the count
 * Returns  every trial that could be made, the one that narrows most first; empty where some lane never ends
 * Cost     the slopes of one row; nothing for each further trial
 * Source   V. V. Fedorov, Theory of Optimal Experiments: one step of a linear criterion (memory; derived)
 */
export const adviseTrial = (input: AdviceInput): readonly TrialAdvice[] => {
  const { estimate, floor, presets, allowances = [], capacity, bottles = usualBottles } = input;
  const { model, fit } = estimate.basis;
  const { forecast = rowForecast(estimate.basis, { floor, allowances }, presets) } = input;
  if (forecast === undefined) return [];
  const setup = {
    lanes: presets.map((_, lane) => lane),
    presets,
    throttled: presets.map(() => false),
  };
  const answer = rowAnswer(model, setup, fit.unknowns, 0);
  const slopes = answer === undefined ? undefined : rowSlopes(model, setup, fit.unknowns, answer);
  if (answer === undefined || slopes === undefined) return [];
  const { whole } = fit.covariance;
  const known = (slope: Float64Array): Float64Array => {
    const found = new Float64Array(slope.length);
    for (let i = 0; i < slope.length; i++) {
      const by = slope[i]!;
      if (by === 0) continue;
      const row = whole[i]!;
      for (let k = 0; k < found.length; k++) found[k] = found[k]! + by * row[k]!;
    }
    return found;
  };
  const varianceAll = ({ parts }: ForecastFigure): number =>
    parts.reduce((sum, { variance }) => sum + variance, 0);
  const volumeVariance = estimate.volumeSpread.value ** 2 / bottles;
  const timeVariance = estimate.timeSpread.value ** 2 / bottles;

  const answers = presets.map((_, i) => {
    const volume = forecast.volumes[i]!;
    const time = forecast.times[i]!;
    return {
      volume: { slope: volume.slope, all: varianceAll(volume) },
      time: { slope: time.slope, all: varianceAll(time) },
    };
  });
  const advice = presets.flatMap((_, lane) =>
    shares.flatMap((share) =>
      [false, true].map((throttled): TrialAdvice => {
        const preset = Math.max(1, Math.round(share * presets[lane]!));
        const base = { answer, slopes, preset: presets[lane]! };
        const { volume, time } = slopesAt(estimate, lane, base, preset, throttled);
        const Av = known(volume);
        const byVolume = volumeVariance + dotOf(volume, Av);
        const At = time === undefined ? undefined : known(time);
        // the time is taken in after the volume: A has then lost what the volume told
        const shared = time === undefined ? 0 : dotOf(time, Av);
        const byTime =
          time === undefined ? 1 : timeVariance + dotOf(time, At!) - (shared * shared) / byVolume;
        const gain = (slope: Float64Array): number => {
          const v = dotOf(slope, Av);
          let taken = (v * v) / byVolume;
          if (At !== undefined) {
            const t = dotOf(slope, At) - (v * shared) / byVolume;
            taken += (t * t) / byTime;
          }
          return taken;
        };
        const then = (of: { readonly slope: Float64Array; readonly all: number }): number =>
          Math.sqrt(Math.max(0, of.all - gain(of.slope)));
        let narrower = 0;
        for (const each of answers) {
          narrower += 1 - then(each.volume) / Math.sqrt(each.volume.all);
          narrower += 1 - then(each.time) / Math.sqrt(each.time.all);
        }
        const values = laneValues(model.scales[lane]!, fit.unknowns, perLane * lane);
        const fills = preset * values.pulse + answer.flows[lane]! * values.afterRun;
        return {
          lane: model.scales[lane]!.lane.tag,
          preset,
          throttled,
          largeVessel: capacity !== undefined && fills > capacity - 3 * estimate.volumeSpread.value,
          bottles,
          volumeNow: Math.sqrt(answers[lane]!.volume.all),
          volumeThen: then(answers[lane]!.volume),
          timeNow: Math.sqrt(answers[lane]!.time.all),
          timeThen: then(answers[lane]!.time),
          narrower: narrower / (2 * answers.length),
        };
      }),
    ),
  );
  return advice.sort((a, b) => b.narrower - a.narrower);
};
