import type { Activity } from './critical-path.ts';

/** A step that is done by hand, or one that goes on by itself. */
export interface Job extends Activity {
  readonly byHand: boolean;
}

/**
 * The order in which a crew can do the steps of a plan, and who does what after what.
 *
 * Method   of the steps whose predecessors are over the one that can begin first, of equal ones the first in the list; it
 *          is given to whoever is free first, and comes after what that one did before
 * Symbols  crew  how many steps by hand go on at once;  next  first moment of work at a moment or later
 * Returns  the steps in an order in which each stands after all that it waits for, the crew's own order among these
 * Assumes  whoever begins a step ends it; the order is good, not the best there is
 * Cost     O(steps^2)
 * Source   list scheduling, common practice
 */
export const crewOrder = (
  jobs: readonly Job[],
  crew: number,
  next: (moment: number) => number,
): readonly Job[] => {
  const followers = new Map<string, Job[]>();
  const awaited = new Map<string, number>();
  const ready = new Map<string, number>();
  for (const job of jobs) {
    awaited.set(job.id, job.after.length);
    ready.set(job.id, job.notBefore ?? 0);
    for (const before of job.after) followers.set(before, [...(followers.get(before) ?? []), job]);
  }
  const free: { at: number; last?: string }[] = Array.from({ length: crew }, () => ({ at: 0 }));
  const waiting = new Set(jobs);
  const out: Job[] = [];
  while (waiting.size > 0) {
    const hand = free.reduce((first, one) => (one.at < first.at ? one : first));
    let best: { job: Job; start: number } | undefined;
    for (const job of waiting) {
      if (awaited.get(job.id) !== 0) continue;
      const able = ready.get(job.id)!;
      const start = job.byHand ? next(Math.max(able, hand.at)) : able;
      if (best === undefined || start < best.start) best = { job, start };
    }
    if (best === undefined) throw new Error('steps of a plan wait for each other');
    const { job, start } = best;
    waiting.delete(job);
    const end = job.span.over(start);
    const { last } = hand;
    const linked = job.byHand && last !== undefined && !job.after.includes(last);
    out.push(linked ? { ...job, after: [...job.after, last] } : job);
    if (job.byHand) Object.assign(hand, { at: end, last: job.id });
    for (const follower of followers.get(job.id) ?? []) {
      awaited.set(follower.id, awaited.get(follower.id)! - 1);
      ready.set(follower.id, Math.max(ready.get(follower.id)!, end));
    }
  }
  return out;
};
