import type { Problem } from '../../quantity/problem.ts';
import { listField } from '../fields.ts';
import { listLengths } from '../list-lengths.ts';
import { temperatures, times } from './bounds.ts';

/** Temperatures over time, as a logger gives them. */
export interface Course {
  readonly times: readonly number[];
  readonly temperatures: readonly number[];
}

export const courseFields = {
  times: listField('time', 't_i', { ...times, fewest: 2 }),
  temperatures: listField('temperature', 'T_i', { ...temperatures, fewest: 2 }),
} as const;

/** A course is refused whose lists do not fit or whose times do not rise. */
export const courseProblems = ({ times: moments, temperatures: read }: Course): readonly Problem[] => {
  const problems = listLengths({ times: moments, temperatures: read });
  if (problems.length > 0) return problems;
  return moments.every((moment, i) => i === 0 || moment > moments[i - 1]!)
    ? []
    : [{ code: 'TIMES_ASCEND', path: 'times' }];
};
