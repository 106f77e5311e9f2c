import type { EventGraph } from './event-graph.ts';
import { longestMeanCycle } from './longest-mean-cycle.ts';

/**
 * Times of the events in the regular regime, in which every block repeats the one before it after one period.
 *
 * Method   longest paths from an event of the critical loop, each arc lessened by the period for a block of lag: an
 *          eigenvector of the max-plus recursion. Events that the critical loop does not hold back run ahead of it;
 *          they get the earliest times at its period, whole periods before all that waits for them
 * Symbols  period  scalar  s  > 0; that of the longest mean cycle
 * Returns  s, one an event, the first event at 0; undefined where there is no loop
 * Cost     O(events arcs)
 * Source   F. Baccelli and others, Synchronization and Linearity, 1992, chapter 3, eigenvectors (memory)
 */
export const regularTimes = (graph: EventGraph, period: number): Float64Array | undefined => {
  const critical = longestMeanCycle(graph)?.loop[0]?.from;
  if (critical === undefined || !(period > 0)) return undefined;
  const times = new Float64Array(graph.events.length).fill(Number.NEGATIVE_INFINITY);
  const slack = 1e-12 * (1 + period);
  /** Longest paths between some of the events, from where they stand now. */
  const stretch = (among: (event: number) => boolean): void => {
    for (let round = 0; round < graph.events.length; round++) {
      let grew = false;
      for (const arc of graph.arcs) {
        if (!among(arc.from) || !among(arc.to)) continue;
        const reach = times[arc.from]! + arc.weight - period * arc.lag;
        if (reach > times[arc.to]! + slack) {
          times[arc.to] = reach;
          grew = true;
        }
      }
      if (!grew) return;
    }
  };
  times[critical] = 0;
  stretch(() => true);
  const ahead = new Set([...times.keys()].filter((event) => times[event] === Number.NEGATIVE_INFINITY));
  if (ahead.size > 0) {
    for (const event of ahead) times[event] = 0;
    stretch((event) => ahead.has(event));
    let late = 0;
    for (const { from, to, weight, lag } of graph.arcs) {
      if (!ahead.has(from) || ahead.has(to)) continue;
      late = Math.max(late, times[from]! + weight - period * lag - times[to]!);
    }
    const blocks = Math.ceil(late / period);
    for (const event of ahead) times[event]! -= blocks * period;
  }
  const first = times[0]!;
  return times.map((time) => time - first);
};
