import type { Lane } from '../hydraulics/system.ts';
import type { LanePriors } from './lane-priors.ts';

/** Unknowns of one lane, each counted in its own standard deviations from what the book says. */
export const laneUnknowns = ['kv', 'pulse', 'afterRun', 'halfClosing', 'drip'] as const;
export type LaneUnknown = (typeof laneUnknowns)[number];
export const perLane = laneUnknowns.length;
export const offsetOf = { kv: 0, pulse: 1, afterRun: 2, halfClosing: 3, drip: 4 } as const;

/** A lane as the book has it, with what its unknowns are counted in. */
export interface LaneScale {
  readonly lane: Lane;
  readonly priors: LanePriors;
  /** Delay and half the closing time, s. */
  readonly afterRun: number;
  /** s */
  readonly halfClosing: number;
  /** Mean part of a count by which the first pulse comes early: 1/2 for a free-running meter. */
  readonly phaseCounts: number;
}

export const laneScale = (lane: Lane, priors: LanePriors): LaneScale => ({
  lane,
  priors,
  afterRun: lane.delay + 0.5 * lane.closing,
  halfClosing: 0.5 * lane.closing,
  phaseCounts: lane.phase * lane.pulses,
});

/** What a lane turns out to be, in SI. */
export interface LaneValues {
  /** m3/h at 1 bar of water */
  readonly kv: number;
  /** Volume of one pulse, m3 */
  readonly pulse: number;
  /** Delay and half the closing time, s */
  readonly afterRun: number;
  /** s */
  readonly halfClosing: number;
  /** m3 */
  readonly drip: number;
}

/** The lane's values where its unknowns stand so far from the book; those of the lane begin at `at`. */
export const laneValues = (
  { lane, priors, afterRun, halfClosing }: LaneScale,
  unknowns: ArrayLike<number>,
  at: number,
): LaneValues => {
  const of = (unknown: LaneUnknown): number => unknowns[at + offsetOf[unknown]]!;
  return {
    kv: lane.kv * Math.exp(priors.kv * of('kv')),
    // a pulse has a volume, however far a lone trial would have it
    pulse: Math.max(0.01, 1 + priors.pulse * of('pulse')) / lane.pulses,
    afterRun: afterRun + priors.afterRun * of('afterRun'),
    halfClosing: halfClosing + priors.halfClosing * of('halfClosing'),
    drip: lane.afterDrip + priors.drip * of('drip'),
  };
};

/** The lane for the hydraulics; `share` of its valve coefficient is left where it is throttled. */
export const laneOf = (scale: LaneScale, values: LaneValues, preset: number, share = 1): Lane => {
  const { lane, phaseCounts } = scale;
  const kv = values.kv * share;
  return {
    ...lane,
    kv,
    kvSlow: lane.kvSlow === lane.kv ? kv : (lane.kvSlow / lane.kv) * kv,
    pulses: 1 / values.pulse,
    preset,
    changeOver: lane.kvSlow === lane.kv ? preset : Math.min(preset, lane.changeOver),
    delay: values.afterRun - values.halfClosing,
    closing: 2 * values.halfClosing,
    afterDrip: values.drip,
    phase: phaseCounts * values.pulse,
  };
};
