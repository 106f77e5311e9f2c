import type { HoldRule } from '../hold-rule.ts';
import { isBegun, nothing, setOf } from './belt-code.ts';
import { noRule, notSetUp, own, ruled, type ShiftEvents, standing, supplied } from './shift-events.ts';
import { caps, running, type ShiftLayout, states, stepOf, steps, stopped } from './shift-layout.ts';
import { capWait, type StationClocks } from './station-clocks.ts';

/** Events at which a wait of the core can end; the row or the set is told beside. */
export const event = {
  loaded: 0,
  loadStart: 1,
  stroke: 2,
  ready: 3,
  discharged: 4,
  arrived: 5,
  start: 6,
  filled: 7,
  released: 8,
  clearStart: 9,
  cleared: 10,
  capStart: 11,
  capped: 12,
  left: 13,
  takeStart: 14,
  taken: 15,
  /** A fill and the heads may begin but for a rule that holds them. */
  due: 16,
  capDue: 17,
} as const;

/** The event of a set that frees what a rule holds; -1 for the end of a stop. */
const freeingEvent = ({ by = 'fill', until }: HoldRule): number => {
  if (until === 'running') return -1;
  if (until === 'way out' && by === 'fill') return event.clearStart;
  if (by !== 'fill') return by === 'closing' ? event.left : event.taken;
  return until === 'fill end' ? event.filled : event.released;
};

/**
 * Where the time of the line's core goes.
 *
 * Method   the core's own work and stops as they are; each of its waits is followed back from what ended it, event by
 *          event, to whatever had to be waited for there, until the moment at which the wait began: so each second of it
 *          falls to one station's work or to one cause, and all seconds add up to the shift
 */
export class CoreTime {
  /** Seconds by state, and within it by step and then by cause. */
  readonly spent: Float64Array;
  /** Figures of a state. */
  readonly width: number;
  private readonly layout: ShiftLayout;
  private readonly clocks: StationClocks;
  private readonly events: ShiftEvents;
  private readonly conveyorSeconds: readonly number[];
  /** What frees what each rule holds: an event of a set, or -1 for the end of a stop. */
  private readonly freeing: readonly number[];
  private readonly transitToHeads: number;
  private readonly transitToTakeOff: number;
  private state = running;
  private low = 0;
  private high = 0;
  private from = 0;
  private to = 0;

  constructor(
    layout: ShiftLayout,
    clocks: StationClocks,
    events: ShiftEvents,
    transits: {
      readonly conveyors: readonly number[];
      readonly toHeads: number;
      readonly toTakeOff: number;
      readonly holds: readonly HoldRule[];
    },
  ) {
    this.freeing = transits.holds.map(freeingEvent);
    this.layout = layout;
    this.clocks = clocks;
    this.events = events;
    this.conveyorSeconds = transits.conveyors;
    this.transitToHeads = transits.toHeads;
    this.transitToTakeOff = transits.toTakeOff;
    // conveyors have steps of their own, and the last cause is a sorter that does not keep up
    this.width = steps.length + layout.conveyors.length + layout.causes.length + 1;
    this.spent = new Float64Array(states.length * this.width);
  }

  begin(from: number, to: number): void {
    this.from = from;
    this.to = to;
    this.spent.fill(0);
  }

  /** Work of the core itself from a to b, with the stops that lie in it. */
  works(station: number, step: number, a: number, b: number, firstStop: number): void {
    this.state = running;
    this.low = this.from;
    this.high = this.to;
    this.segment(station, step, a, b, firstStop);
  }

  /** The core stands in a state from `low` to `high`, when the event of that kind and number let it go on. */
  waits(state: number, low: number, high: number, kind: number, number: number): void {
    this.low = Math.max(low, this.from);
    this.high = Math.min(high, this.to);
    if (!(this.high > this.low)) return;
    this.state = state;
    this.follow(kind, number);
  }

  private charge(slot: number, a: number, b: number, state = this.state): void {
    const from = Math.max(a, this.low);
    const to = Math.min(b, this.high);
    if (to > from) this.spent[state * this.width + slot]! += to - from;
  }

  private segment(station: number, slot: number, a: number, b: number, firstStop: number): void {
    if (a >= this.high || b <= this.low) return;
    const { log } = this.clocks;
    let at = a;
    if (firstStop >= 0) {
      for (let i = firstStop; i < log.count; i++) {
        if (log.station[i] !== station) continue;
        const from = log.from[i]!;
        if (from >= b) break;
        const to = log.to[i]!;
        if (to <= at) continue;
        this.charge(slot, at, from);
        const waits = log.kind[i] === capWait ? caps : stopped;
        this.charge(
          this.causeSlot(log.cause[i]!),
          Math.max(a, from),
          Math.min(b, to),
          this.state === running ? waits : this.state,
        );
        at = to;
      }
    }
    this.charge(slot, at, b);
  }

  private causeSlot(cause: number): number {
    return steps.length + this.layout.conveyors.length + cause;
  }

  /** What is not to be followed further back. */
  private rest(before: number): void {
    this.charge(stepOf.start, Number.NEGATIVE_INFINITY, before);
  }

  /** Back along the way; returns the moment from which it is told. */
  private ridden(number: number): number {
    const { rows } = this.events;
    const { conveyors } = this.layout;
    const restarted = rows.restartCode[number] !== nothing;
    const from = restarted ? rows.restart[number]! : rows.discharged[number]!;
    const piece = restarted ? rows.restartPiece[number]! : 0;
    let at = from;
    for (let i = piece; i < conveyors.length; i++) {
      const downs = this.clocks.clockStops.downs[conveyors[i]!]!;
      let left = restarted && i === piece ? rows.restartLeft[number]! : this.conveyorSeconds[i]!;
      const slot = steps.length + i;
      for (let d = 0; d < downs.count && downs.from[d]! <= at + left; d++) {
        if (downs.to[d]! <= at) continue;
        const from = Math.max(at, downs.from[d]!);
        this.charge(slot, at, from);
        this.charge(this.causeSlot(downs.cause[d]!), from, downs.to[d]!);
        left -= from - at;
        at = downs.to[d]!;
      }
      this.charge(slot, at, at + left);
      at += left;
    }
    // a belt that stood because the next was down
    if (conveyors.length > 0) this.charge(steps.length + conveyors.length - 1, at, this.high);
    return from;
  }

  /** All of a wait for a belt that its own stops by the clock kept from moving. */
  private stoodDown(until: number): void {
    const { conveyors } = this.layout;
    let from = until;
    for (const conveyor of conveyors) {
      const { from: begin, to, cause, count } = this.clocks.clockStops.downs[conveyor]!;
      for (let i = 0; i < count && from === until; i++) {
        if (to[i] !== until) continue;
        from = begin[i]!;
        this.charge(this.causeSlot(cause[i]!), from, until);
      }
    }
    this.charge(steps.length, Number.NEGATIVE_INFINITY, from);
  }

  /** Event of the first station after the way that let a belt run on. */
  private letRun(code: number): number {
    const { fill, closing } = this.layout;
    if (isBegun(code)) return fill >= 0 ? event.start : closing >= 0 ? event.capStart : event.takeStart;
    return fill >= 0 ? event.cleared : closing >= 0 ? event.left : event.taken;
  }

  private follow(kind: number, number: number): void {
    const { layout } = this;
    const { rows, sets, late } = this.events;
    let at = this.high;
    let what = kind;
    let n = number;
    while (at > this.low) {
      if (n < 0) {
        this.rest(at);
        return;
      }
      // an event looks at the one before it too
      if (n - 1 < late.wholeFrom) late.writeFrom(Math.max(0, n - 1));
      // what was told already is not told again
      if (at < this.high) this.high = at;
      switch (what) {
        case event.loaded:
          this.segment(layout.load, stepOf.load, rows.loadStart[n]!, rows.loaded[n]!, rows.loadStop[n]!);
          at = rows.loadStart[n]!;
          what = event.loadStart;
          break;
        case event.loadStart:
          at = rows.loadStart[n]!;
          if (rows.loadStart[n]! > (n === 0 ? 0 : rows.loaded[n - 1]!)) {
            what = event.stroke;
            n -= layout.rowsLoaded;
          } else {
            what = event.loaded;
            n -= 1;
          }
          break;
        case event.stroke: {
          at = rows.stroke[n]!;
          const rule = rows.strokeRule[n]!;
          if (rule !== noRule) {
            what = this.freeing[rule]!;
            if (what >= 0) {
              n = rows.strokeRuleBy[n]!;
              break;
            }
            // behind what stopped the other, whatever else it waited for
            at = rows.strokeFree[n]!;
            this.charge(this.causeSlot(rows.strokeRuleBy[n]!), at, this.high);
            this.high = Math.min(this.high, at);
          }
          const why = rows.whyStroke[n]!;
          if (why === own) {
            what = event.ready;
            n -= 1;
            if (layout.washer < 0) n = -1;
          } else if (why === supplied) what = event.loaded;
          else if (why === notSetUp) {
            what = event.discharged;
            n -= 1;
          } else if (why === standing) {
            const code = rows.strokeFor[n]!;
            if (code === nothing) {
              this.stoodDown(at);
              return;
            }
            what = this.letRun(code);
            n = setOf(code);
          } else {
            const set = rows.strokeFor[n]!;
            if (why === ruled) what = at > sets.filled[set]! ? event.released : event.filled;
            else if (layout.fill >= 0) what = event.start;
            else what = layout.closing >= 0 ? event.left : event.taken;
            n = set;
          }
          break;
        }
        case event.ready:
          this.segment(layout.washer, stepOf.dwell, rows.stroked[n]!, rows.ready[n]!, rows.washStop[n]!);
          this.segment(layout.washer, stepOf.stroke, rows.stroke[n]!, rows.stroked[n]!, rows.washStop[n]!);
          at = rows.stroke[n]!;
          what = event.stroke;
          break;
        case event.arrived:
          at = this.ridden(n);
          if (rows.restartCode[n] === nothing) what = event.discharged;
          else {
            what = this.letRun(rows.restartCode[n]!);
            n = setOf(rows.restartCode[n]!);
          }
          break;
        case event.discharged:
          if (layout.discharge >= 0) {
            const from = rows.stroked[n]!;
            this.segment(layout.discharge, stepOf.setUp, from, rows.discharged[n]!, rows.dischargeStop[n]!);
          }
          if (layout.washer >= 0) {
            this.segment(layout.washer, stepOf.stroke, rows.stroke[n]!, rows.stroked[n]!, rows.washStop[n]!);
          }
          at = rows.stroke[n]!;
          what = event.stroke;
          break;
        case event.start:
          at = sets.start[n]!;
          what = event.due;
          if (sets.startRule[n] !== noRule) {
            what = this.freeing[sets.startRule[n]!]!;
            if (what >= 0) n = sets.startRuleBy[n]!;
            else {
              what = event.due;
              this.charge(this.causeSlot(sets.startRuleBy[n]!), sets.startFree[n]!, at);
              at = sets.startFree[n]!;
            }
          }
          break;
        case event.due:
          at = sets.startRule[n] === noRule ? sets.start[n]! : sets.startFree[n]!;
          if (at > (n === 0 ? 0 : sets.cleared[n - 1]!)) {
            what = event.arrived;
            n = sets.row[n]!;
          } else {
            what = event.cleared;
            n -= 1;
          }
          break;
        case event.filled:
          this.segment(layout.fill, stepOf.fill, sets.opened[n]!, sets.filled[n]!, sets.fillStop[n]!);
          this.segment(layout.fill, stepOf.travelIn, sets.start[n]!, sets.opened[n]!, sets.fillStop[n]!);
          at = sets.start[n]!;
          what = event.start;
          break;
        case event.released:
          this.segment(layout.fill, stepOf.lower, sets.filled[n]!, sets.released[n]!, sets.fillStop[n]!);
          at = sets.filled[n]!;
          what = event.filled;
          break;
        case event.clearStart:
          at = sets.clearStart[n]!;
          if (at > sets.released[n]!) {
            if (layout.closing >= 0) {
              what = event.left;
              n -= layout.setsBeforeHeads;
            } else {
              what = event.taken;
              n -= layout.setsBeforeTakeOff;
            }
          } else what = event.released;
          break;
        case event.cleared:
          this.segment(
            layout.fill,
            stepOf.clearOut,
            sets.clearStart[n]!,
            sets.cleared[n]!,
            sets.fillStop[n]!,
          );
          at = sets.clearStart[n]!;
          what = event.clearStart;
          break;
        case event.capStart:
          at = sets.capStart[n]!;
          what = event.capDue;
          if (sets.capRule[n] !== noRule) {
            what = this.freeing[sets.capRule[n]!]!;
            if (what >= 0) n = sets.capRuleBy[n]!;
            else {
              what = event.capDue;
              this.charge(this.causeSlot(sets.capRuleBy[n]!), sets.capFree[n]!, at);
              at = sets.capFree[n]!;
            }
          }
          break;
        case event.capDue:
          at = sets.capRule[n] === noRule ? sets.capStart[n]! : sets.capFree[n]!;
          if (at > (n === 0 ? 0 : sets.left[n - 1]!)) {
            this.charge(stepOf.convey, at - this.transitToHeads, at);
            at -= this.transitToHeads;
            if (layout.fill >= 0) what = event.cleared;
            else {
              what = event.arrived;
              n = sets.row[n]!;
            }
          } else {
            what = event.left;
            n -= 1;
          }
          break;
        case event.capped:
          this.segment(layout.closing, stepOf.cap, sets.capStart[n]!, sets.capped[n]!, sets.capStop[n]!);
          at = sets.capStart[n]!;
          what = event.capStart;
          break;
        case event.left:
          at = sets.left[n]!;
          if (at > sets.capped[n]!) {
            what = event.taken;
            n -= layout.setsBeforeTakeOff;
          } else what = event.capped;
          break;
        case event.takeStart:
          at = sets.takeStart[n]!;
          if (at > (n === 0 ? 0 : sets.taken[n - 1]!)) {
            this.charge(stepOf.convey, at - this.transitToTakeOff, at);
            at -= this.transitToTakeOff;
            if (layout.closing >= 0) what = event.left;
            else if (layout.fill >= 0) what = event.cleared;
            else {
              what = event.arrived;
              n = sets.row[n]!;
            }
          } else {
            what = event.taken;
            n -= 1;
          }
          break;
        default:
          this.segment(layout.takeOff, stepOf.takeOff, sets.takeStart[n]!, sets.taken[n]!, sets.takeStop[n]!);
          at = sets.takeStart[n]!;
          what = event.takeStart;
      }
    }
  }
}
