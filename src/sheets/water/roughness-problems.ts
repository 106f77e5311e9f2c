import type { Problem } from '../../quantity/problem.ts';

/** A wall rougher than half the bore leaves no pipe; the friction law has no meaning well before that. */
const most = 0.5;

/** One problem for every pipe whose roughness is over half of its bore. */
export const roughnessProblems = (roughness: readonly number[], bore: readonly number[]): Problem[] =>
  roughness.flatMap((r, i) =>
    r > most * bore[i]!
      ? [{ code: 'PIPE_ROUGHNESS', path: 'roughness', given: r, allowed: `<= ${most * bore[i]!}` }]
      : [],
  );
