import type { Lane } from '../hydraulics/system.ts';

/** How far a lane may lie from what the book says of it, as standard deviations, before any trial was made. */
export interface LanePriors {
  /** Of the volume of a pulse, as a share. */
  readonly pulse: number;
  /** Of the valve coefficient, as a share. */
  readonly kv: number;
  /** Of the after-run time, delay + closing/2, s. */
  readonly afterRun: number;
  /** Of half the closing time, s: by it the lane is shut later than its after-run says. */
  readonly halfClosing: number;
  /** Of the drip, m3. */
  readonly drip: number;
}

/** A meter whose pulses nobody checked, and a valve from a catalogue. */
const pulseShare = 0.05;
const kvShare = 0.25;
/** A valve on another air pressure may take twice as long, or hardly any time, s. */
const afterRunLeast = 0.15;
const afterRunShare = 0.5;
/** The closing is quicker to judge than the delay, s. */
const halfClosingLeast = 0.015;
const halfClosingShare = 0.5;
/** A drop is 0.05 mL. */
const dripLeast = 5e-8;
const dripShare = 0.2;

/**
 * Wide ranges for a lane of which the book gives plain values: they decide nothing that a handful of trials can tell,
 * and keep an answer honest where the trials can't.
 *
 * Source   common practice
 */
export const lanePriors = (lane: Lane): LanePriors => {
  const halfClosing = 0.5 * lane.closing;
  return {
    pulse: pulseShare,
    kv: kvShare,
    afterRun: afterRunLeast + afterRunShare * (lane.delay + halfClosing),
    halfClosing: Math.max(halfClosingLeast, halfClosingShare * halfClosing),
    drip: dripLeast + dripShare * lane.afterDrip,
  };
};
