import { manifoldBalance } from '../hydraulics/manifold-balance.ts';
import { runInertia } from '../hydraulics/run-inertia.ts';
import type { FillSystem } from '../hydraulics/system.ts';
import type { FillTrial } from './trial.ts';

/** A trial that can't be read, or that there is none. */
export interface TrialProblem {
  readonly code:
    | 'NO_TRIALS'
    | 'ROW_NEVER_ENDS'
    | 'LANE_UNKNOWN'
    | 'PRESET_NOT_POSITIVE'
    | 'VOLUME_NOT_POSITIVE'
    | 'TIME_NOT_POSITIVE'
    | 'NOTHING_READ';
  /** Place of the trial in the list. */
  readonly trial?: number;
  readonly given?: number | string;
}

/** A trial that says nothing about a running lane, though nothing is wrong with it. */
export interface Apart {
  readonly trial: number;
  readonly why: 'after-stop' | 'too-short';
  /** For a first bottle after a stop: its volume less that of a running lane, m3. */
  readonly miss?: number;
}

export interface KeptTrials {
  /** Places of the trials that are used. */
  readonly kept: readonly number[];
  /** Places of all whose lane is known to have run with their count. */
  readonly ran: readonly number[];
  readonly apart: readonly Apart[];
  readonly problems: readonly TrialProblem[];
}

/** With fewer counts the lane is shut before its valve is open. */
const leastCounts = 20;
/** A fill shorter than this many time constants of the run never had the flow that the hydraulics give it. */
const leastInertia = 1.5;

const problemsOf = (trial: FillTrial, known: boolean): readonly Omit<TrialProblem, 'trial'>[] => {
  const found: Omit<TrialProblem, 'trial'>[] = [];
  const { preset, volume, time } = trial;
  if (!known) found.push({ code: 'LANE_UNKNOWN', given: trial.lane });
  if (!(preset > 0 && Number.isFinite(preset))) found.push({ code: 'PRESET_NOT_POSITIVE', given: preset });
  if (volume !== undefined && !(volume > 0 && Number.isFinite(volume))) {
    found.push({ code: 'VOLUME_NOT_POSITIVE', given: volume });
  }
  if (time !== undefined && !(time > 0 && Number.isFinite(time))) {
    found.push({ code: 'TIME_NOT_POSITIVE', given: time });
  }
  if (volume === undefined && time === undefined && trial.overflow === 'none') {
    found.push({ code: 'NOTHING_READ' });
  }
  return found;
};

/** Parts trials that tell of a running lane from those that can't. */
export const keptTrials = (system: FillSystem, trials: readonly FillTrial[]): KeptTrials => {
  const kept: number[] = [];
  const ran: number[] = [];
  const apart: Apart[] = [];
  const problems: TrialProblem[] = [];
  const { flow } = manifoldBalance(system);
  const { timeConstant } = runInertia(system, flow);
  const laneFlow = flow / Math.max(1, system.lanes.length);
  trials.forEach((trial, i) => {
    const lane = system.lanes.find(({ tag }) => tag === trial.lane);
    const wrong = problemsOf(trial, lane !== undefined);
    problems.push(...wrong.map((problem) => ({ ...problem, trial: i })));
    if (lane !== undefined && trial.preset > 0 && Number.isFinite(trial.preset)) ran.push(i);
    if (wrong.length > 0 || lane === undefined) return;
    if (trial.afterStop === true) apart.push({ trial: i, why: 'after-stop' });
    else if (
      trial.preset < leastCounts ||
      trial.preset / lane.pulses < leastInertia * timeConstant * laneFlow
    ) {
      apart.push({ trial: i, why: 'too-short' });
    } else kept.push(i);
  });
  return { kept, ran, apart, problems };
};
