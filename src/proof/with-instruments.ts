import type { Book } from '../book/index.ts';
import { instrumentDate } from './instrument-date.ts';
import { instrumentNamed } from './instrument-named.ts';
import type { RecordedResult } from './results.ts';

/**
 * Tries of checks, each that was read with an instrument of the book whose calibration was past on that day marked so.
 *
 * Method   the instrument by its tag or its name as it was typed; day of the try after the day on which the next calibration was due; one that was calibrated since is taken to
 *          have been found right
 * Returns  the same tries, in order
 */
export const withInstruments = (
  tries: readonly RecordedResult[],
  { line }: Book,
): readonly RecordedResult[] => {
  const known = line?.instruments ?? [];
  if (known.length === 0) return tries;
  const isOverdue = ({ instrument, at }: RecordedResult): boolean => {
    const own = instrument === undefined ? undefined : instrumentNamed(known, instrument);
    return own !== undefined && instrumentDate(own.due, at.slice(0, 10)) === 'out of date';
  };
  return tries.map((one) => (isOverdue(one) ? { ...one, overdue: true } : one));
};
