import type { Result } from '../quantity/problem.ts';
import { allowancesOf, type RecordedAllowance } from './allowances.ts';
import { members, moment, type Shape } from './body-shape.ts';
import { lotsOf, type RecordedLot } from './lots.ts';
import { readRecorded } from './read-recorded.ts';
import { allowanceParts, lotParts, sampleParts, trialParts } from './record-bodies.ts';
import { type RecordedSample, samplesOf } from './samples.ts';
import { type RecordedTrial, trialsOf } from './trials.ts';

interface Parts {
  readonly needed: Readonly<Record<string, Shape>>;
  readonly optional: Readonly<Record<string, Shape>>;
}

/** A list by hand need not say who and when: the order of its lines is that of the bottles. */
const byHand = ({ needed: { by, ...needed }, optional }: Parts): Shape =>
  members(needed, { ...optional, ...(by === undefined ? {} : { by }), at: moment });

/** The trials of a file; problems those of readRecorded. */
export const readTrials = (text: string): Result<readonly RecordedTrial[]> =>
  readRecorded(text, {
    written: byHand(trialParts),
    of: trialsOf,
    expected: 'a JSON list of trials, each with floor, lane and preset, or a file of exported records',
  });

/** The measured bottles of a file; problems those of readRecorded. */
export const readSamples = (text: string): Result<readonly RecordedSample[]> =>
  readRecorded(text, {
    written: byHand(sampleParts),
    of: samplesOf,
    expected: 'a JSON list of measured bottles, each with format and bottle, or a file of exported records',
  });

/** The lots of a file; problems those of readRecorded. */
export const readLots = (text: string): Result<readonly RecordedLot[]> =>
  readRecorded(text, {
    written: byHand(lotParts),
    of: lotsOf,
    expected: 'a JSON list of lots, each with floor, format and packages, or a file of exported records',
  });

/** The measured allowances of a file; problems those of readRecorded. */
export const readAllowances = (text: string): Result<readonly RecordedAllowance[]> =>
  readRecorded(text, {
    written: byHand(allowanceParts),
    of: allowancesOf,
    expected: 'a JSON list of allowances, each with from, floor, of and value, or a file of exported records',
  });
