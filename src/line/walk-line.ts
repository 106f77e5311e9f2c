import { orderOfEvents } from './event-graph.ts';
import type { LineGraph } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';
import { walkBelts } from './walk-belts.ts';
import { mostFills, type Walk, type WalkedFill, WalkedRows, type WalkedSupply } from './walked-rows.ts';

/**
 * The line row by row for a while, with a supply that may fall.
 *
 * Method   each event at the earliest moment that its arcs allow, block after block; a fill takes what the supply gives
 *          at the moment at which its lanes open, and the tank is made up in between. With conveyors that do not
 *          accumulate `walkBelts`
 * Symbols  duration  scalar  s, counted from the first bottles out
 * Returns  the fills in order, or where and why the line stood still
 * Cost     O(fills arcs)
 * Source   acceptance reference F2, recursion
 */
export const walkLine = (
  times: LineTimes,
  graph: LineGraph,
  supply: WalkedSupply,
  duration: number,
): Walk => {
  const order = orderOfEvents(graph);
  const { fill } = times;
  if (order === undefined || fill === undefined) return { fills: [] };
  if (times.way.some(({ accumulates }) => accumulates === false)) {
    const lead = graph.arcs.reduce((sum, { weight }) => sum + weight, 0);
    return walkBelts(times, supply, { duration, lead });
  }
  const into = graph.events.map((_, i) => graph.arcs.filter((arc) => arc.to === i));
  const reach = Math.max(0, ...graph.arcs.map((arc) => arc.lag));
  const blocks: Float64Array[] = [];
  const fills: WalkedFill[] = [];
  const lastOut = [graph.takenOff, graph.capped, graph.cleared].find((events) => events.length > 0)!;
  const opening = fill.travelIn + fill.lift + fill.lag;

  const rows = new WalkedRows(supply);
  let end = Number.POSITIVE_INFINITY;
  while (fills.length < mostFills) {
    const now = new Float64Array(graph.events.length);
    blocks.push(now);
    if (blocks.length > reach + 1) blocks.shift();
    for (const event of order) {
      let at = 0;
      for (const arc of into[event]!) {
        const back = blocks[blocks.length - 1 - arc.lag];
        if (back === undefined) continue;
        let weight = arc.weight;
        const j = arc.lag === 0 ? graph.fillEnd.indexOf(event) : -1;
        if (j >= 0) {
          weight = opening + rows.fill(back[arc.from]! + opening);
          if (rows.stuck !== undefined) return { fills, stuck: rows.stuck };
        }
        if (back[arc.from]! + weight > at) at = back[arc.from]! + weight;
      }
      now[event] = at;
    }
    for (let j = 0; j < graph.fills; j++) {
      const out = now[lastOut[j]!]!;
      if (fills.length === 0) end = out + duration;
      fills.push({ out, ...rows.rows[fills.length]! });
      if (out > end) return { fills };
    }
  }
  return { fills };
};
