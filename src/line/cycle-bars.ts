import { type Arc, orderOfEvents } from './event-graph.ts';
import type { LineGraph } from './line-graph.ts';

/** One stretch of a station's time within a block. */
export interface StationBar {
  readonly station: string;
  readonly state: 'works' | 'waits';
  /** The step that is done; for a wait, what it waits for: a step, or the tag of a hold rule, or a kind of room. */
  readonly what: string;
  /** Station whose step ends the wait. */
  readonly waitsFor?: string;
  /** s from the start of the block */
  readonly from: number;
  readonly to: number;
}

/** Blocks after which the transient of so small a graph has died out. */
const settled = (graph: LineGraph): number => 2 * graph.events.length ** 2 + 20;

/**
 * Who works and who waits for whom in one settled block.
 *
 * Method   the recursion x_i(k) = max(x_j(k - lag) + w), run until its transient has died; each step of an arc that
 *          decides its event is work of its station, what is left up to the event is that station's wait
 * Returns  bars between 0 and the period, cut where they cross its end
 * Source   acceptance reference F2
 */
export const cycleBars = (graph: LineGraph, period: number): readonly StationBar[] => {
  const order = orderOfEvents(graph);
  if (order === undefined || !(period > 0)) return [];
  const into = graph.events.map((_, i) => graph.arcs.filter((arc) => arc.to === i));
  const reach = Math.max(0, ...graph.arcs.map((arc) => arc.lag));
  const blocks: Float64Array[] = [];
  const last = Math.min(settled(graph), 2000);
  const decidedBy: (Arc | undefined)[] = graph.events.map(() => undefined);
  for (let block = 0; block < last; block++) {
    const now = new Float64Array(graph.events.length);
    blocks.push(now);
    if (blocks.length > reach + 1) blocks.shift();
    for (const event of order) {
      decidedBy[event] = undefined;
      for (const arc of into[event]!) {
        const back = blocks[blocks.length - 1 - arc.lag];
        if (back === undefined) continue;
        const at = back[arc.from]! + arc.weight;
        if (decidedBy[event] === undefined || at > now[event]!) {
          now[event] = at;
          decidedBy[event] = arc;
        }
      }
    }
  }
  const start = blocks.at(-1)?.[0] ?? 0;
  const bars: StationBar[] = [];
  const add = (bar: StationBar): void => {
    if (!(bar.to - bar.from > 1e-9)) return;
    const shift = Math.floor((bar.from - start) / period + 1e-12) * period + start;
    const from = bar.from - shift;
    const to = bar.to - shift;
    bars.push({ ...bar, from, to: Math.min(to, period) });
    if (to > period + 1e-9) bars.push({ ...bar, from: 0, to: Math.min(to - period, from) });
  };
  const drawn = new Set<string>();
  for (const arc of graph.arcs) {
    const began = blocks[blocks.length - 1 - arc.lag]?.[arc.from];
    const ended = blocks.at(-1)?.[arc.to];
    if (began === undefined || ended === undefined) continue;
    let at = began;
    for (const { step, station, seconds } of arc.steps) {
      const key = `${station} ${step} ${at.toFixed(6)}`;
      if (!drawn.has(key)) add({ station, state: 'works', what: step, from: at, to: at + seconds });
      drawn.add(key);
      at += seconds;
    }
    // a station whose own work is done and whose next event waits for another arc
    const own = arc.steps.at(-1)?.station;
    const cause = decidedBy[arc.to];
    if (own !== undefined && cause !== undefined && cause !== arc && stationOf(graph, arc.to) === own) {
      const because = cause.because ?? cause.steps.at(-1)?.step ?? graph.events[cause.from]!;
      const waitsFor = cause.steps.at(-1)?.station ?? stationOf(graph, cause.from);
      add({
        station: own,
        state: 'waits',
        what: because,
        from: at,
        to: ended,
        ...(waitsFor === undefined ? {} : { waitsFor }),
      });
    }
  }
  return bars.sort((a, b) => a.from - b.from);
};

/** The station that does what an event ends or begins: that of the steps that start there. */
const stationOf = (graph: LineGraph, event: number): string | undefined =>
  graph.arcs.find((arc) => arc.from === event && arc.steps.length > 0)?.steps[0]?.station;
