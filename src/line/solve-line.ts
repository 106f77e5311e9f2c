import { bottleRate } from '../sheets/rate/bottle-rate.ts';
import { beltPeriod } from './belt-period.ts';
import { orderOfEvents } from './event-graph.ts';
import { type LineGraph, lineGraph } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';
import { longestMeanCycle, type MeanCycle } from './longest-mean-cycle.ts';
import { waitingCircle } from './waiting-circle.ts';

/** The line with constant times: what holds it, and how long. */
export interface LineSolution {
  readonly times: LineTimes;
  readonly graph: LineGraph;
  readonly cycle: MeanCycle;
  /** Seconds of a fill of all lanes, or of a row where there is no fill station. */
  readonly period: number;
  /** s of it that conveyors cost which stand with what stands at their ends; absent where they cost nothing. */
  readonly byBelts?: number;
  /** Bottles a second with a full tank. */
  readonly rate: number;
  /** The washer's own period for the same bottles, s. */
  readonly washerPeriod?: number;
}

/**
 * Exact period of the line and the loop that decides it.
 *
 * Returns  undefined where nothing bounds the rate or the block would be too large; `deadlock` where events of one block
 *          wait for each other, each before the one that it waits for
 * Source   `longestMeanCycle`; with conveyors that do not accumulate `beltPeriod`
 */
export const solveLine = (
  times: LineTimes,
): LineSolution | { readonly deadlock: readonly string[] } | undefined => {
  const graph = lineGraph(times);
  if (graph === undefined) return undefined;
  if (orderOfEvents(graph) === undefined) return { deadlock: waitingCircle(graph) };
  const cycle = longestMeanCycle(graph);
  if (cycle === undefined || !(cycle.period > 0)) return undefined;
  const { washer } = times;
  const block = times.way.some(({ accumulates }) => accumulates === false)
    ? beltPeriod(times, graph, cycle.period)
    : cycle.period;
  const byBelts = (block - cycle.period) / graph.fills;
  return {
    times,
    graph,
    cycle,
    period: block / graph.fills,
    rate: bottleRate(graph.bottles, block),
    ...(byBelts > 1e-9 * block ? { byBelts } : {}),
    ...(washer === undefined
      ? {}
      : { washerPeriod: ((washer.stroke + washer.dwell) * graph.indexes) / graph.fills }),
  };
};
