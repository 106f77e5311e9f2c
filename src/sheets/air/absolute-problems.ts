import type { Problem } from '../../quantity/problem.ts';

/** One problem for every gauge pressure that lies at or below absolute zero at the local atmosphere. */
export const absoluteProblems = (
  gauges: Readonly<Record<string, number | readonly number[]>>,
  atmosphere: number,
): Problem[] =>
  Object.entries(gauges).flatMap(([path, given]) => {
    const lowest = typeof given === 'number' ? given : given.reduce((a, b) => Math.min(a, b), 0);
    return lowest + atmosphere > 0
      ? []
      : [{ code: 'AIR_BELOW_VACUUM', path, given: lowest, allowed: `> ${-atmosphere}` }];
  });
