import { type Slip, type SlipGround, slipsAmong } from '../../fill/slips.ts';
import type { BookReader } from '../book-reader.ts';
import type { FillFloor } from './fill-floor.ts';
import type { TrialInSi } from './trials-in-si.ts';

/** What is questioned of one trial. */
export interface TrialSlips {
  /** Place of the trial among those that were given. */
  readonly trial: number;
  readonly slips: readonly Slip[];
}

/** What the book says that a bottle of a floor can be compared with. */
export const slipGround = (reader: BookReader, { inputs }: FillFloor): SlipGround => {
  const emptyMass = reader.number(`${inputs.formatPath}/mass`, 'mass');
  const { level } = inputs.model;
  return {
    lanes: inputs.model.lanes.map(({ tag, pulses }) => ({ tag, pulses })),
    ...(inputs.liquid === undefined ? {} : { density: inputs.liquid.density }),
    ...(emptyMass === undefined ? {} : { emptyMass }),
    ...(level === undefined ? {} : { level }),
  };
};

/** Likely slips among the trials of a floor, each with what was likely meant. */
export const trialSlips = (
  reader: BookReader,
  floor: FillFloor,
  trials: readonly TrialInSi[],
): readonly TrialSlips[] =>
  slipsAmong(
    trials.map(({ entered }) => entered),
    slipGround(reader, floor),
  ).map(({ bottle, slips }) => ({ trial: trials[bottle]!.trial, slips }));
