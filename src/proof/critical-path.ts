/** How long something takes: the moment of its end for that of its start, and back. */
export interface Span {
  readonly over: (start: number) => number;
  /** The greatest start whose end is no later. */
  readonly begun: (end: number) => number;
}

/** Something that takes as long whenever it begins. */
export const plainSpan = (duration: number): Span => ({
  over: (start) => start + duration,
  begun: (end) => end - duration,
});

/** A step of a plan. */
export interface Activity {
  readonly id: string;
  /** Ids of those that must be over before it begins. */
  readonly after: readonly string[];
  readonly span: Span;
  /** It can't begin before this moment, whatever is over. */
  readonly notBefore?: number;
}

/** A step with its earliest and latest times, in the unit of the spans. */
export interface Timed {
  readonly id: string;
  readonly start: number;
  readonly end: number;
  readonly latestStart: number;
  readonly latestEnd: number;
  /** By how much it may end later before the whole does. */
  readonly slack: number;
  /** The step whose end decides when it begins; none where it can begin at once, or its own moment decides. */
  readonly driver?: string;
}

export interface Network {
  readonly timed: ReadonlyMap<string, Timed>;
  readonly end: number;
  /** The chain of steps that makes the end what it is, from the first to the last. */
  readonly path: readonly string[];
}

/**
 * The critical path of a plan.
 *
 * Method   forward: start = max(ends of those before, own moment), end = over(start);
 *          backward: latest end = min(latest starts of those after), latest start = begun(latest end); slack their difference
 * Symbols  activities  each after those that it names, which are all among them
 * Returns  times of each, the end of the last and the chain that decides it; of equal ones the first
 * Assumes  no circle: the order given is one in which they can be done
 * Cost     O(activities and what they name)
 * Source   critical path method, Kelley and Walker 1959 (memory); teaching examples beside the test
 */
export const criticalPath = (activities: readonly Activity[]): Network => {
  const ahead = new Map<string, Omit<Timed, 'latestStart' | 'latestEnd' | 'slack'>>();
  let end = 0;
  let last: string | undefined;
  for (const { id, after, span, notBefore = 0 } of activities) {
    let start = notBefore;
    let driver: string | undefined;
    for (const before of after) {
      const known = ahead.get(before);
      if (known === undefined) throw new Error(`${id} stands before ${before}, which it waits for`);
      if (known.end > start || (driver === undefined && known.end === start)) {
        start = known.end;
        driver = before;
      }
    }
    const own = span.over(start);
    ahead.set(id, { id, start, end: own, ...(driver === undefined ? {} : { driver }) });
    if (last === undefined || own > end) {
      end = own;
      last = id;
    }
  }
  const latest = new Map<string, number>();
  const timed = new Map<string, Timed>();
  for (const { id, after, span } of activities.toReversed()) {
    const latestEnd = latest.get(id) ?? end;
    const latestStart = span.begun(latestEnd);
    for (const before of after) {
      latest.set(before, Math.min(latest.get(before) ?? end, latestStart));
    }
    const own = ahead.get(id)!;
    timed.set(id, { ...own, latestStart, latestEnd, slack: latestEnd - own.end });
  }
  const path: string[] = [];
  for (let at = last; at !== undefined; at = ahead.get(at)?.driver) path.unshift(at);
  return { timed, end, path };
};
