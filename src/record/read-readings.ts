import type { Result } from '../quantity/problem.ts';
import { members, moment } from './body-shape.ts';
import { readRecorded } from './read-recorded.ts';
import { type RecordedReading, readingsOf } from './readings.ts';
import { readingParts } from './record-bodies.ts';

/**
 * The readings of a file.
 *
 * Returns  readings; those of records as they count now
 * Problems those of readRecorded
 */
export const readReadings = (text: string): Result<readonly RecordedReading[]> =>
  readRecorded(text, {
    written: members({ ...readingParts.needed, at: moment }, readingParts.optional),
    of: readingsOf,
    expected: 'a JSON list of readings, each with floor, of, value, by and at, or a file of exported records',
  });
