import type { Problem } from '../quantity/problem.ts';
import type { ClaimedMoments } from './claimed-moments.ts';
import { proofProblem } from './problems.ts';
import type { RecordedResult } from './results.ts';

/**
 * Tries of checks together with the runs and lots that answer some.
 *
 * Method   a try that names a run or lot takes readings and verdict from it, and stands in its place; any other run or lot
 *          is a try by itself
 * Symbols  tries  in order
 * Returns  results in order; a try that names what is not there, or answers another check, told
 */
export const withRuns = (
  tries: readonly RecordedResult[],
  runs: readonly RecordedResult[],
  { sorted }: ClaimedMoments,
): { readonly results: readonly RecordedResult[]; readonly problems: readonly Problem[] } => {
  const key = ({ id, check, floor }: RecordedResult): string => [id, floor, check].join('\n');
  const known = new Map(runs.map((run) => [key(run), run]));
  const taken = new Set<string>();
  const problems: Problem[] = [];
  const told = tries.map((one) => {
    if (one.from === undefined) return one;
    const source = key({ ...one, id: one.from });
    const run = known.get(source);
    if (run === undefined) {
      problems.push(
        proofProblem('PROOF_SOURCE_UNKNOWN', `/records/${one.id}/body/from`, { given: one.from }),
      );
      return one;
    }
    taken.add(source);
    const { readings, seen, brief } = run;
    return {
      ...one,
      ...(readings === undefined ? {} : { readings }),
      ...(seen === undefined ? {} : { seen }),
      ...(brief === undefined ? {} : { brief }),
    };
  });
  const alone = runs.filter((run) => !taken.has(key(run)));
  return { results: alone.length === 0 ? told : sorted([...told, ...alone]), problems };
};
