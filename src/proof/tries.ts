import type { Book } from '../book/index.ts';
import type { Problem } from '../quantity/problem.ts';
import type { Clocked } from '../record/clocked.ts';
import type { Envelope } from '../record/envelope.ts';
import { claimedMoments } from './claimed-moments.ts';
import { type RecordedResult, resultsOf } from './results.ts';
import { resultsOfRuns } from './results-of-runs.ts';
import { withInstruments } from './with-instruments.ts';
import { withRuns } from './with-runs.ts';

/** Records, or those of them that count, with when each of them was written. */
export interface RecordsInTime extends Clocked {
  readonly records: readonly Envelope[];
}

/** Every try of every check that some records hold, first to last; those that name a run or lot that is not there, told. */
export const triesOf = (
  book: Book,
  { records, ...clocked }: Pick<RecordsInTime, 'records' | 'moments' | 'doubts'>,
): { readonly results: readonly RecordedResult[]; readonly problems: readonly Problem[] } => {
  const moments = claimedMoments(clocked);
  const { results, problems } = withRuns(resultsOf(records, moments), resultsOfRuns(book, records), moments);
  return { results: withInstruments(results, book), problems };
};
