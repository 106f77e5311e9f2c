import type { Fit } from './fit.ts';
import type { SetupReadings } from './readings.ts';
import type { RowModel } from './row-model.ts';
import type { SetupTrials } from './row-setups.ts';
import type { Estimated } from './student-sum.ts';

/** What the trials say of one lane. */
export interface LaneEstimate {
  readonly lane: string;
  /** Pulses in a cubic metre. */
  readonly pulses: Estimated;
  /** Volume of a pulse, m3. */
  readonly pulse: Estimated;
  /** Delay and half the closing time, s. */
  readonly afterRun: Estimated;
  /** m3/h at 1 bar of water */
  readonly kv: Estimated;
  /** m3 */
  readonly drip: Estimated;
  /** From the count to the lane fully shut, s. */
  readonly shutTime: Estimated;
  /** Scatter of the lane's own bottles about their mean, with what the instrument adds, m3; where enough were weighed. */
  readonly spread?: Estimated;
  /** Bottles that were used. */
  readonly trials: number;
}

/** Lanes as they may be beside what the fit says. */
export interface DrawnLanes {
  /** By how much each unknown lies off the fit, by what is known of all of them together. */
  readonly known: Float64Array;
  /** What another order of closing in the trials changes besides. */
  readonly besides: Float64Array;
}

/** The fit itself, for whoever goes on from it. */
export interface EstimateBasis {
  readonly model: RowModel;
  readonly fit: Fit;
  readonly setups: readonly SetupTrials[];
  readonly readings: readonly SetupReadings[];
  /** What may be true of the lanes: drawn when somebody asks first, and then the same. */
  readonly draws: () => readonly (readonly [DrawnLanes, DrawnLanes])[];
}
