import type { Arc, EventGraph } from './event-graph.ts';

export interface MeanCycle {
  /** Seconds a block in the long run. */
  readonly period: number;
  /** The arcs of the critical loop, in the order in which they follow each other. */
  readonly loop: readonly Arc[];
}

/** A loop whose weights, each lessened by `rate` for a block of lag, add up to more than nothing. */
const gainingLoop = (graph: EventGraph, rate: number, slack: number): readonly Arc[] | undefined => {
  const n = graph.events.length;
  const longest = new Float64Array(n);
  const cameBy: (Arc | undefined)[] = new Array(n).fill(undefined);
  let last = -1;
  for (let round = 0; round <= n; round++) {
    last = -1;
    for (const arc of graph.arcs) {
      const reach = longest[arc.from]! + arc.weight - rate * arc.lag;
      if (reach > longest[arc.to]! + slack) {
        longest[arc.to] = reach;
        cameBy[arc.to] = arc;
        last = arc.to;
      }
    }
    if (last < 0) return undefined;
  }
  // n steps back from a node that still grew lies on the loop itself
  let at = last;
  for (let i = 0; i < n; i++) at = cameBy[at]!.from;
  const loop: Arc[] = [];
  let node = at;
  do {
    const arc = cameBy[node]!;
    loop.push(arc);
    node = arc.from;
  } while (node !== at);
  return loop.reverse();
};

/**
 * Exact period of a line of events with constant times: the longest mean cycle of its event graph.
 *
 * Method   lambda = max over loops of (sum w)/(sum lag). From a loop's own ratio, look for a loop that gains at that
 *          rate (Bellman-Ford on w - lambda lag) and take its ratio, until none does: each ratio is that of a real
 *          loop, so the answer is exact but for the additions along it
 * Symbols  w    weight  [arcs]  s       >= 0
 *          lag  lag     [arcs]  blocks  >= 0, no loop of lag 0 (see `orderOfEvents`)
 * Returns  period and critical loop; undefined where there is no loop at all: nothing then bounds the rate
 * Cost     O(events arcs) a round, a handful of rounds
 * Source   F. Baccelli and others, Synchronization and Linearity, 1992, theorem 3.23 (memory); the ratio iteration of
 *          E. Lawler, 1967 (memory)
 */
export const longestMeanCycle = (graph: EventGraph): MeanCycle | undefined => {
  let total = 0;
  for (const arc of graph.arcs) total += Math.abs(arc.weight);
  const slack = 1e-13 * (1 + total);
  // any rate below zero lets every loop gain
  let rate = -1;
  let best: readonly Arc[] | undefined;
  for (let round = 0; round < 10_000; round++) {
    const loop = gainingLoop(graph, rate, slack);
    if (loop === undefined) break;
    let weight = 0;
    let lag = 0;
    for (const arc of loop) {
      weight += arc.weight;
      lag += arc.lag;
    }
    if (lag === 0) return undefined;
    if (best !== undefined && weight / lag <= rate) break;
    rate = weight / lag;
    best = loop;
  }
  return best === undefined ? undefined : { period: rate, loop: best };
};
