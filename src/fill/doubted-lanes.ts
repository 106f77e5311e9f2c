import type { Fit } from './fit.ts';
import type { LanePriors } from './lane-priors.ts';
import { laneUnknowns, laneValues, offsetOf, perLane } from './lane-unknowns.ts';
import { varianceOf } from './noise.ts';
import type { SetupReadings } from './readings.ts';
import type { RowModel } from './row-model.ts';

/** What the trials say against what was held likely of their lanes. */
export interface DoubtedLanes {
  /** Places of lanes that lie further from the book than its ranges leave likely. */
  readonly unlike: readonly number[];
  /** Places of lanes whose after-run comes out below nought. */
  readonly negative: readonly number[];
  /** Ranges of all lanes that let both be; absent where nothing is against those that were taken. */
  readonly priors?: readonly LanePriors[];
}

/** An estimate so many deviations on the wrong side is no chance. */
const sure = 3;
/** Nor is an interval of 90 % that lies below nought as a whole. */
const wholly = 1.645;

/** Mean flow of a lane at its counts, m3/s. */
const flowOf = (lane: number, { answers }: Fit, readings: readonly SetupReadings[]): number => {
  const flows = readings.flatMap(({ setup }, row) =>
    setup.lanes.flatMap((each, i) => (each === lane ? [answers[row]!.flows[i]!] : [])),
  );
  return flows.reduce((sum, flow) => sum + flow, 0) / Math.max(1, flows.length);
};

/** Scatter of repeats with fewer degrees of freedom says too little. */
const leastRepeats = 4;
/** A variance so many times that of the repeats is none of the bottles: the ranges hold the lanes where they are not. */
const unlikeRepeats = 4;
/** What such ranges are multiplied with before it is looked at again. */
const wideStep = 4;

/** Whether bottles miss what the lanes' values give for them by far more than those of one count differ. */
const isHeldOff = ({ volumeNoise }: Fit, readings: readonly SetupReadings[], least: number): boolean => {
  let squares = 0;
  let dof = 0;
  let variance = 0;
  let told = 0;
  let bottles = 0;
  for (const { volumes } of readings) {
    for (const own of volumes) {
      const mean = own.reduce((sum, { value }) => sum + value, 0) / own.length;
      for (const { value, stated } of own) {
        squares += (value - mean) ** 2;
        variance += varianceOf(volumeNoise, stated);
        told += stated;
      }
      dof += Math.max(0, own.length - 1);
      bottles += own.length;
    }
  }
  if (dof < leastRepeats) return false;
  return variance / bottles > unlikeRepeats * (squares / dof + told / bottles + least);
};

/**
 * Lanes of which something is not as it was told.
 *
 * Method   where the bottles miss by far more than repeats differ, all ranges are made four times as wide. A lane whose
 *          value lies z > 3 of its range's deviations from the book has all of them made z times as wide: what was told of it has proved wrong. Where an after-run is below nought by more than chance, something
 *          else than the valve takes from each bottle, a tare or a pulse that is missed: nobody knows whether it goes with
 *          the flow, so the drip may be as much less, and how late it is shut tells nothing of it
 * Symbols  least  m6, variance that is always there
 * Returns  wider ranges, with which the trials are to be fitted again: the same volumes here, and wide ones elsewhere
 */
export const doubtedLanes = (
  { scales }: RowModel,
  fit: Fit,
  readings: readonly SetupReadings[],
  least: number,
): DoubtedLanes => {
  const unlike: number[] = [];
  const negative: number[] = [];
  const held = isHeldOff(fit, readings, least);
  let wider = held;
  const priors = scales.map((scale, lane): LanePriors => {
    const at = perLane * lane;
    const { afterRun } = laneValues(scale, fit.unknowns, at);
    const [kv, pulse, tau] = (['kv', 'pulse', 'afterRun'] as const).map((unknown) =>
      Math.abs(fit.unknowns[at + offsetOf[unknown]]!),
    );
    const place = at + offsetOf.afterRun;
    const deviation = scale.priors.afterRun * Math.sqrt(fit.covariance.whole[place]![place]!);
    const far = Math.max(kv!, pulse!, tau!);
    const below = afterRun < -wholly * deviation;
    if (afterRun < 0) negative.push(lane);
    if (far > sure || afterRun < -sure * deviation) unlike.push(lane);
    if (!held && far <= sure && !below) return scale.priors;
    wider = true;
    const times = Math.max(held ? wideStep : 1, far > sure ? far : 1);
    const wide = Object.fromEntries(
      laneUnknowns.map((unknown) => [unknown, times * scale.priors[unknown]]),
    ) as unknown as LanePriors;
    const missed = below ? scale.afterRun - afterRun : 0;
    return {
      ...wide,
      drip: Math.hypot(wide.drip, missed * flowOf(lane, fit, readings)),
      halfClosing: Math.hypot(wide.halfClosing, missed),
    };
  });
  return { unlike, negative, ...(wider ? { priors } : {}) };
};
