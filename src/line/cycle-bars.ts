import type { Arc, Step } from './event-graph.ts';
import type { LineGraph } from './line-graph.ts';
import { regularTimes } from './regular-times.ts';

/** One stretch of a station's time within a block. */
export interface StationBar {
  readonly station: string;
  readonly state: 'works' | 'waits';
  /** The step that is done; for a wait, what it waits for: `bottles`, the tag of a hold rule, or a kind of room. */
  readonly what: string;
  /** Station whose step ends the wait. */
  readonly waitsFor?: string;
  /** s from the start of the block */
  readonly from: number;
  readonly to: number;
}

/** Shorter bars are the rounding of sums, s. */
const leastBar = 1e-9;

const sum = (steps: readonly Step[]): number => steps.reduce((total, { seconds }) => total + seconds, 0);

const sameStep = (a: Step | undefined, b: Step | undefined): boolean =>
  a !== undefined && b !== undefined && a.step === b.step && a.station === b.station;

/** An arc into an event, cut where its last step is one that other arcs into the event end with as well. */
interface Arrival {
  readonly arc: Arc;
  /** What is done before the shared step, or all of it. */
  readonly steps: readonly Step[];
  readonly began: number;
  /** When these steps are done. */
  readonly ready: number;
}

const latest = (arrivals: readonly Arrival[]): Arrival =>
  arrivals.reduce((last, each) => (each.ready > last.ready ? each : last));

/**
 * Who works and who waits for whom in one block of the regular regime.
 *
 * Method   times of the events by `regularTimes`. The steps of an arc are the work of their stations; a step with which
 *          several arcs into an event end is done once, when the last of them has come to it. A station that was ready
 *          for its next event earlier than that waits meanwhile for the arc that came last
 * Symbols  period  scalar  s a block; that of the longest mean cycle
 * Returns  bars between 0 and the period, cut where they cross its end; the first stroke begins at 0
 * Assumes  a station that runs ahead of the pace, with unlimited room after it, is shown at the pace and without a wait
 * Cost     O(events arcs)
 * Source   `regularTimes`
 */
export const cycleBars = (graph: LineGraph, period: number): readonly StationBar[] => {
  const times = regularTimes(graph, period);
  if (times === undefined) return [];
  const bars: StationBar[] = [];
  const add = (bar: StationBar): void => {
    const length = Math.min(bar.to - bar.from, period);
    if (!(length > leastBar)) return;
    // a hair before a whole period is that period
    const blocks = Math.floor((bar.from + leastBar) / period);
    const from = Math.max(0, bar.from - blocks * period);
    const to = from + length;
    if (to <= period + leastBar) bars.push({ ...bar, from, to: Math.min(to, period) });
    else {
      bars.push({ ...bar, from, to: period });
      bars.push({ ...bar, from: 0, to: to - period });
    }
  };
  const drawn = new Set<string>();
  const work = (from: number, began: number, steps: readonly Step[]): void => {
    let at = began;
    for (const { step, station, seconds } of steps) {
      // one stroke leads both to the next stroke and to the fill
      const key = `${from} ${station} ${step}`;
      if (!drawn.has(key)) add({ station, state: 'works', what: step, from: at, to: at + seconds });
      drawn.add(key);
      at += seconds;
    }
  };
  const wait = (event: number, ready: number, until: number, { arc, steps }: Arrival): void => {
    const waitsFor = steps.at(-1)?.station ?? graph.stations[arc.from];
    add({
      station: graph.stations[event]!,
      state: 'waits',
      what: arc.because ?? 'bottles',
      ...(waitsFor === undefined ? {} : { waitsFor }),
      from: ready,
      to: until,
    });
  };
  graph.events.forEach((_, event) => {
    const arcs = graph.arcs.filter((arc) => arc.to === event);
    const shared = arcs
      .map((arc) => arc.steps.at(-1))
      .find((step, i) => arcs.some((other, j) => j !== i && sameStep(step, other.steps.at(-1))));
    const arrivals = arcs.map((arc): Arrival => {
      const steps = sameStep(shared, arc.steps.at(-1)) ? arc.steps.slice(0, -1) : arc.steps;
      const began = times[arc.from]! - period * arc.lag;
      return { arc, steps, began, ready: began + sum(steps) };
    });
    if (arrivals.length === 0) return;
    for (const { arc, began, steps } of arrivals) work(arc.from, began, steps);
    const isOwn = ({ arc }: Arrival): boolean => graph.stations[arc.from] === graph.stations[event];
    const toShared = arrivals.filter(({ arc, steps }) => steps.length < arc.steps.length);
    const others = arrivals.filter(({ arc, steps }) => steps.length === arc.steps.length);
    let own = arrivals.find(isOwn)?.ready;
    if (shared !== undefined) {
      const last = latest(toShared);
      const mine = toShared.find(isOwn);
      if (mine !== undefined) wait(event, mine.ready, last.ready, last);
      work(event, last.ready, [shared]);
      own = last.ready + shared.seconds;
    }
    if (own !== undefined && others.length > 0) {
      const last = latest(others);
      if (last.ready > own) wait(event, own, last.ready, last);
    }
  });
  return bars.sort((a, b) => a.from - b.from);
};
