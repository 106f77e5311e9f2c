import type { SolveRemedies } from './page.ts';

interface Waiting {
  readonly begin: (over: () => void) => () => void;
  stop?: () => void;
  given: boolean;
}

/**
 * Searches for remedies one after the other: a page that wants several answers at once asks for them in turn, or every
 * search would open a worker of its own and all would be late.
 */
export const solveInTurn = (solve: SolveRemedies): SolveRemedies => {
  const queue: Waiting[] = [];
  let busy: Waiting | undefined;
  const next = (): void => {
    if (busy !== undefined) return;
    const one = queue.shift();
    if (one === undefined) return;
    busy = one;
    const stop = one.begin(() => {
      if (busy !== one) return;
      busy = undefined;
      next();
    });
    one.stop = stop;
  };
  return (question, answer) => {
    const one: Waiting = {
      given: false,
      begin: (over) =>
        solve(question, (search) => {
          if (!one.given) answer(search);
          if (search === 'failed' || search.done) over();
        }),
    };
    queue.push(one);
    next();
    return () => {
      one.given = true;
      const at = queue.indexOf(one);
      if (at >= 0) queue.splice(at, 1);
      one.stop?.();
      if (busy !== one) return;
      busy = undefined;
      next();
    };
  };
};
