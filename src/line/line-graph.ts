import { headsTime } from '../sheets/rate/station-rate.ts';
import type { Arc, EventGraph, Step } from './event-graph.ts';
import { type HeldStation, type HoldRule, waitsForBottles } from './hold-rule.ts';
import type { LineTimes } from './line-times.ts';

/** The event graph of one block: the smallest number of bottles that is whole rows and whole fills. */
export interface LineGraph extends EventGraph {
  readonly bottles: number;
  readonly indexes: number;
  readonly fills: number;
  /** Tag of the station that does what the event of the same number ends, or that begins with it. */
  readonly stations: readonly string[];
  /** Event numbers by what happens; each list has one entry an index or a fill. */
  readonly stroke: readonly number[];
  readonly fillStart: readonly number[];
  readonly fillEnd: readonly number[];
  readonly released: readonly number[];
  readonly cleared: readonly number[];
  readonly capped: readonly number[];
  readonly takenOff: readonly number[];
}

/** Blocks larger than this have no practical meaning and would only cost time. */
export const mostInBlock = 64;

const greatestCommon = (a: number, b: number): number => (b === 0 ? a : greatestCommon(b, a % b));

/**
 * The line as events that wait for each other.
 *
 * Method   a block is lcm(row, lanes) bottles: a indexes and b fills. Index i discharges bottles up to (i+1) row;
 *          fill j wants bottles up to (j+1) lanes. Arcs:
 *          washer   index after index: stroke + dwell; held until the fill in progress is ended or released;
 *                   not before the way has room; so a fill and the heads where a rule holds them by what lies behind
 *          fill     not before its bottles have come (stroke + way) nor before the last have cleared out;
 *                   travel in, lift, lag, slowest lane -> fill end; drip, lower -> released;
 *                   and room before the heads; clear out -> cleared
 *          closing  ceil(lanes/heads) per bottle after cleared and after the set before
 *          take-off lanes/rate after capped and after the set before; a full take-off stops the heads
 * Returns  events and arcs; a block of more than 64 indexes or fills is refused (undefined)
 * Assumes  constant times, nothing missing, nothing rejected
 * Source   acceptance reference F2 (max-plus line), widened to rows that differ from lanes
 */
export const lineGraph = (times: LineTimes): LineGraph | undefined => {
  const { washer, fill, closing, takeOff } = times;
  const row = washer?.row ?? fill?.lanes ?? 1;
  const lanes = fill?.lanes ?? row;
  const block = (row * lanes) / greatestCommon(row, lanes);
  const a = block / row;
  const b = block / lanes;
  if (a > mostInBlock || b > mostInBlock) return undefined;

  const events: string[] = [];
  const stations: string[] = [];
  const arcs: Arc[] = [];
  const series = (by: { readonly station: string } | undefined, name: string, count: number): number[] => {
    if (by === undefined) return [];
    return Array.from({ length: count }, (_, i) => {
      stations.push(by.station);
      return events.push(`${name} ${i + 1}`) - 1;
    });
  };
  const stroke = series(washer, 'stroke', a);
  const fillStart = series(fill, 'fill start', b);
  const fillEnd = series(fill, 'fill end', b);
  const released = series(fill, 'released', b);
  const cleared = series(fill, 'cleared', b);
  const capped = series(closing, 'capped', b);
  const takenOff = series(takeOff, 'taken off', b);

  /** An arc to event `i` of `to` from event `j` of `from`, where j may lie in an earlier block. */
  const wait = (
    to: readonly number[],
    i: number,
    from: readonly number[],
    j: number,
    steps: readonly Step[],
    because?: string,
  ): void => {
    if (to.length === 0 || from.length === 0) return;
    const back = Math.floor(j / from.length);
    arcs.push({
      from: from[j - back * from.length]!,
      to: to[i]!,
      weight: steps.reduce((sum, s) => sum + s.seconds, 0),
      lag: -back,
      steps,
      ...(because === undefined ? {} : { because }),
    });
  };

  const heldBy = (station: HeldStation): readonly HoldRule[] =>
    times.holds.filter((hold) => waitsForBottles(hold) && (hold.holds ?? 'washer') === station);
  const passedBy = ({ by = 'fill', until }: HoldRule): readonly number[] => {
    if (by !== 'fill') return by === 'closing' ? capped : takenOff;
    return until === 'release' ? released : fillEnd;
  };

  // without a fill station the washer's rows go straight to the next station
  let rowsTo: Step[] = [];
  if (washer !== undefined) {
    const at = washer.station;
    const index: Step[] = [
      { step: 'stroke', station: at, seconds: washer.stroke },
      { step: 'dwell', station: at, seconds: washer.dwell },
    ];
    const way: Step[] = [index[0]!, ...times.way];
    for (let i = 0; i < a; i++) {
      wait(stroke, i, stroke, i - 1, index);
      const inProgress = Math.floor((i * row) / lanes) - 1;
      for (const hold of heldBy('washer')) wait(stroke, i, passedBy(hold), inProgress, [], hold.rule);
      if (times.wayRoom < Number.POSITIVE_INFINITY) {
        const room = Math.max(times.wayRoom, row);
        wait(stroke, i, fillStart, Math.ceil(((i + 1) * row - room) / lanes) - 1, [], 'room on the way');
      }
    }
    for (let j = 0; j < b; j++) {
      wait(fillStart, j, stroke, Math.ceil(((j + 1) * lanes) / row) - 1, way);
    }
    rowsTo = way;
  }
  if (fill !== undefined) {
    const at = fill.station;
    const part = (step: string, seconds: number): Step => ({ step, station: at, seconds });
    const sets = closing === undefined ? 0 : Math.max(1, Math.floor(closing.room / lanes));
    for (let j = 0; j < b; j++) {
      wait(fillStart, j, cleared, j - 1, []);
      for (const hold of heldBy('fill')) wait(fillStart, j, passedBy(hold), j - 1, [], hold.rule);
      wait(fillEnd, j, fillStart, j, [
        part('travelIn', fill.travelIn),
        part('lift', fill.lift),
        part('lag', fill.lag),
        part('fill', fill.filling),
      ]);
      wait(released, j, fillEnd, j, [part('drip', fill.drip), part('lower', fill.lower)]);
      wait(cleared, j, released, j, [part('clearOut', fill.clearOut)]);
      if (sets < Number.POSITIVE_INFINITY) {
        wait(cleared, j, capped, j - sets, [part('clearOut', fill.clearOut)], 'room before the heads');
      }
    }
  }
  if (closing !== undefined) {
    const cap: Step = {
      step: 'cap',
      station: closing.station,
      seconds: headsTime(lanes, closing.heads, closing.perBottle),
    };
    for (let j = 0; j < b; j++) {
      if (fill === undefined) wait(capped, j, stroke, j, [...rowsTo, cap]);
      else wait(capped, j, cleared, j, [cap]);
      wait(capped, j, capped, j - 1, [cap]);
      for (const hold of heldBy('closing')) wait(capped, j, passedBy(hold), j - 1, [cap], hold.rule);
    }
  }
  if (takeOff !== undefined) {
    const take: Step = { step: 'takeOff', station: takeOff.station, seconds: lanes / takeOff.rate };
    const before = closing !== undefined ? capped : fill !== undefined ? cleared : [];
    for (let j = 0; j < b; j++) {
      if (before.length === 0) wait(takenOff, j, stroke, j, [...rowsTo, take]);
      else wait(takenOff, j, before, j, [take]);
      wait(takenOff, j, takenOff, j - 1, [take]);
      if (takeOff.room < Number.POSITIVE_INFINITY && before.length > 0) {
        const sets = Math.max(1, Math.floor(takeOff.room / lanes));
        // heads hold a bottle that they have closed; a fill station holds its bottles before they clear out
        const after: Step[] =
          closing === undefined && fill !== undefined
            ? [{ step: 'clearOut', station: fill.station, seconds: fill.clearOut }]
            : [];
        wait(before, j, takenOff, j - sets, after, 'room at take-off');
      }
    }
  }
  return {
    events,
    arcs,
    bottles: block,
    indexes: a,
    fills: b,
    stations,
    stroke,
    fillStart,
    fillEnd,
    released,
    cleared,
    capped,
    takenOff,
  };
};
