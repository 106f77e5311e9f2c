import type { StuckRow } from '../hydraulics/filled-row.ts';
import type { RowModel } from '../hydraulics/row-table.ts';
import type { Stored } from '../hydraulics/stored.ts';
import { orderOfEvents } from './event-graph.ts';
import type { LineGraph } from './line-graph.ts';
import type { LineTimes } from './line-times.ts';

/** The filler's supply over the hour. */
export interface WalkedSupply {
  readonly row: RowModel;
  readonly start: Stored;
  /** What tank and vessel hold after a while without draw. */
  readonly rest: (stored: Stored, seconds: number) => Stored;
}

/** One fill of the filler's lanes. */
export interface WalkedFill {
  /** When the last station let its bottles go, s from the first fill's start. */
  readonly out: number;
  /** When its lanes opened, s. */
  readonly opened: number;
  readonly fillTime: number;
  /** Drawn from the tank and not made up when its lanes had shut, m3. */
  readonly drawn: number;
  /** When the tank gave no more than its make-up, s. */
  readonly ranDry?: number;
}

export interface Walk {
  readonly fills: readonly WalkedFill[];
  /** Set where a fill could never end. */
  readonly stuck?: { readonly at: number; readonly lanes: readonly string[] };
}

const isStuck = (row: object): row is StuckRow => 'stuck' in row;

/** More fills than any hour of a bottle line; keeps a line of no time at all from running for ever. */
export const mostFills = 20_000;

/**
 * The line row by row for a while, with a supply that may fall.
 *
 * Method   each event at the earliest moment that its arcs allow, block after block; a fill takes what the supply gives
 *          at the moment at which its lanes open, and the tank is made up in between
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
  const into = graph.events.map((_, i) => graph.arcs.filter((arc) => arc.to === i));
  const reach = Math.max(0, ...graph.arcs.map((arc) => arc.lag));
  const blocks: Float64Array[] = [];
  const fills: WalkedFill[] = [];
  const lastOut = [graph.takenOff, graph.capped, graph.cleared].find((events) => events.length > 0)!;
  const opening = fill.travelIn + fill.lift + fill.lag;

  let stored = supply.start;
  let drawnAt = 0;
  let end = Number.POSITIVE_INFINITY;
  const outcomes: Omit<WalkedFill, 'out'>[] = [];
  for (let block = 0; fills.length < mostFills; block++) {
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
          const opened = back[arc.from]! + opening;
          if (block === 0 && j === 0) drawnAt = opened;
          stored = supply.rest(stored, opened - drawnAt);
          const row = supply.row(stored);
          if (isStuck(row)) return { fills, stuck: { at: opened, lanes: row.lanes } };
          weight = opening + row.fillTime;
          stored = row.stored;
          drawnAt = opened + row.drawTime;
          outcomes.push({
            opened,
            fillTime: row.fillTime,
            drawn: stored.drawn,
            ...(row.ranDry === undefined ? {} : { ranDry: opened + row.ranDry }),
          });
        }
        if (back[arc.from]! + weight > at) at = back[arc.from]! + weight;
      }
      now[event] = at;
    }
    for (let j = 0; j < graph.fills; j++) {
      const out = now[lastOut[j]!]!;
      if (fills.length === 0) end = out + duration;
      fills.push({ out, ...outcomes[fills.length]! });
      if (out > end) return { fills };
    }
  }
  return { fills };
};
