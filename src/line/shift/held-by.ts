import type { HeldStation, HoldRule } from '../hold-rule.ts';
import type { SetEvents, ShiftEvents } from './shift-events.ts';
import type { ShiftLayout } from './shift-layout.ts';
import { ownStop, type StationClocks } from './station-clocks.ts';

/** A rule with where it last looked. */
interface Rule {
  readonly hold: HoldRule;
  /** Its number among those of the line. */
  readonly number: number;
  /** What holds, by number. */
  readonly station: number;
  /** Sets that have room before it. */
  readonly room: number;
  at: number;
}

/** When the station that holds is rid of a set. */
const goneFrom = ({ by = 'fill' }: HoldRule, { cleared, left, taken }: SetEvents): Float64Array =>
  by === 'fill' ? cleared : by === 'closing' ? left : taken;

/**
 * Rules that hold a station by one behind it.
 *
 * Method   a station that may begin at a moment begins when no rule holds it any more. What holds has passed all sets that
 *          came to it before, and what comes later comes after the moment that is asked for, so looking back is enough
 * Assumes  what has begun goes on: a rule keeps a station from its next bottles and does not stop it under way
 * Cost     O(1) a question, since moments rise
 */
export class HeldBy {
  /** Of the last answer: number of the rule, and the set or the cause that held; -1 where none did. */
  rule = -1;
  by = -1;
  private readonly rules: Readonly<Record<HeldStation, readonly Rule[]>>;
  private readonly events: ShiftEvents;
  private readonly clocks: StationClocks;

  constructor(holds: readonly HoldRule[], layout: ShiftLayout, events: ShiftEvents, clocks: StationClocks) {
    const rulesOf = (station: HeldStation): readonly Rule[] =>
      holds.flatMap((hold, number) => {
        const { by = 'fill', holds: held = 'washer' } = hold;
        if (held !== station || (held === 'washer' && isPlain(hold))) return [];
        const room = by === 'closing' ? layout.setsBeforeHeads : layout.setsBeforeTakeOff;
        return [{ hold, number, station: layout[by], room, at: 0 }];
      });
    this.rules = { washer: rulesOf('washer'), fill: rulesOf('fill'), closing: rulesOf('closing') };
    this.events = events;
    this.clocks = clocks;
  }

  begin(): void {
    for (const rules of Object.values(this.rules)) for (const rule of rules) rule.at = 0;
  }

  holds(station: HeldStation): boolean {
    return this.rules[station].length > 0;
  }

  /** When a station that may begin at a moment does, so many sets having come to those behind it. */
  until(station: HeldStation, from: number, sets: number): number {
    this.rule = -1;
    this.by = -1;
    let at = from;
    for (let before = -1; before !== at; ) {
      before = at;
      for (const rule of this.rules[station]) at = this.freed(rule, at, sets);
    }
    return at;
  }

  private freed(rule: Rule, from: number, sets: number): number {
    if (rule.hold.until === 'running') return this.runs(rule, from);
    const { sets: of } = this.events;
    const { hold, room } = rule;
    const gone = goneFrom(hold, of);
    if (hold.until === 'release' || hold.until === 'fill end') {
      if (sets === 0) return from;
      const { by = 'fill', until } = hold;
      const past = by !== 'fill' ? gone : until === 'release' ? of.released : of.filled;
      return past[sets - 1]! > from ? this.held(rule, sets - 1, past[sets - 1]!) : from;
    }
    if (room === Number.POSITIVE_INFINITY && hold.until === 'room') return from;
    let at = from;
    while (rule.at < sets && this.freedAt(rule, rule.at) <= at) rule.at += 1;
    for (let set = rule.at; set < sets; set++) {
      const since = this.heldFrom(rule, set, sets);
      if (since > at) break;
      const until = this.freedAt(rule, set);
      if (until > at) at = this.held(rule, set, until);
    }
    return at;
  }

  /** When a set begins to be in the way, and when it no longer is. */
  private heldFrom({ hold, room }: Rule, set: number, sets: number): number {
    const { by } = hold;
    const { released, clearStart, capped, left } = this.events.sets;
    if (hold.until === 'way out') return by === 'closing' ? capped[set]! : released[set]!;
    const last = set + room - 1;
    if (last >= sets) return Number.POSITIVE_INFINITY;
    return by === 'closing' ? clearStart[last]! : left[last]!;
  }

  private freedAt({ hold }: Rule, set: number): number {
    const { sets } = this.events;
    if (hold.until === 'way out' && hold.by !== 'closing') return sets.clearStart[set]!;
    return goneFrom(hold, sets)[set]!;
  }

  private runs(rule: Rule, from: number): number {
    const { log, clockStops } = this.clocks;
    const { station } = rule;
    let at = from;
    while (rule.at < log.count && !(log.station[rule.at] === station && log.to[rule.at]! > at)) rule.at += 1;
    for (let i = rule.at; i < log.count; i++) {
      if (log.station[i] !== station || log.kind[i] !== ownStop) continue;
      if (log.from[i]! > at) break;
      if (log.to[i]! > at) at = this.held(rule, log.cause[i]!, log.to[i]!);
    }
    const downs = clockStops.downs[station]!;
    for (let i = 0; i < downs.count && downs.from[i]! <= at; i++)
      if (downs.to[i]! > at) at = this.held(rule, downs.cause[i]!, downs.to[i]!);
    return at;
  }

  private held(rule: Rule, by: number, until: number): number {
    this.rule = rule.number;
    this.by = by;
    return until;
  }
}

/** The washer that waits for the fill: every row is passed with it. */
export const isPlain = (hold: HoldRule): boolean =>
  (hold.holds ?? 'washer') === 'washer' &&
  (hold.by ?? 'fill') === 'fill' &&
  (hold.until === 'release' || hold.until === 'fill end');
