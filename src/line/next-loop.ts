import type { EventGraph } from './event-graph.ts';
import { longestMeanCycle, type MeanCycle } from './longest-mean-cycle.ts';

/**
 * The loop that decides once the critical one is out of the way.
 *
 * Method   another loop lacks at least one arc of the critical one: the longest of the graphs without each of these arcs
 * Returns  undefined where there is no other loop
 * Cost     one `longestMeanCycle` for each arc of the critical loop
 * Source   `longestMeanCycle`
 */
export const nextLoop = (graph: EventGraph, { loop }: MeanCycle): MeanCycle | undefined => {
  let next: MeanCycle | undefined;
  for (const without of loop) {
    const other = longestMeanCycle({ ...graph, arcs: graph.arcs.filter((arc) => arc !== without) });
    if (other !== undefined && (next === undefined || other.period > next.period)) next = other;
  }
  return next;
};
