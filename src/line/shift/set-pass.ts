import { ChuteLevel } from './chute-level.ts';
import { event } from './core-time.ts';
import { type StruckBottles, sampled, sampledInto, struckBottles } from './sampled.ts';
import { blocked, held, caps as noCaps, starved, stepOf, turnsOf } from './shift-layout.ts';
import { type ShiftState, streamOf } from './shift-state.ts';
import { type SetSupply, SupplyLevel } from './supply-level.ts';

/** And so the most rows of one walk. */
const drawnAtOnce = 512;

/**
 * Sets of bottles from where they are gathered to the end of the line: fill station, heads, take-off.
 *
 * Method   each step at the earliest moment that its station, the bottles and the room behind allow; these look back alone
 * Assumes  a set leaves a station whole; a bottle without room stays in its station
 * Cost     O(1) a set, and O(bottles) where heads draw a time for each or take caps from a chute
 * Source   acceptance reference F2, recursion
 */
export class SetPass {
  readonly chute: ChuteLevel | undefined;
  readonly supply: SetSupply | undefined;
  private readonly state: ShiftState;
  // looked at in every row: at hand rather than a step away
  private readonly line: ShiftState['line'];
  private readonly layout: ShiftState['layout'];
  private readonly clocks: ShiftState['clocks'];
  private readonly core: ShiftState['core'];
  private readonly events: ShiftState['events'];
  readonly rejected: StruckBottles;
  private readonly drawFills: ReturnType<typeof sampledInto>;
  private readonly capSeconds: () => number;
  private readonly takeSeconds: () => number;
  readonly opening: number;
  readonly lowering: number;
  /** Bottles that stand before the first station and are no set yet. */
  private gathered = 0;
  /** Sets whose fills are drawn. */
  private ahead = 0;

  constructor(state: ShiftState, supply?: SetSupply) {
    const { line, layout, clocks, chances } = state;
    const { fill, closing, takeOff } = line;
    this.state = state;
    this.line = line;
    this.layout = layout;
    this.clocks = clocks;
    this.core = state.core;
    this.events = state.events;
    this.chute =
      closing?.chute === undefined
        ? undefined
        : new ChuteLevel(closing.chute, clocks, {
            sorter: layout.sorter,
            heads: layout.closing,
            slow: layout.causes.length,
          });
    this.supply = supply ?? (fill?.supply === undefined ? undefined : new SupplyLevel(fill.supply));
    this.rejected = struckBottles(closing?.rejected ?? 0, chances, streamOf.rejected);
    this.drawFills = sampledInto(fill?.filling ?? 0, chances, streamOf.fill);
    this.capSeconds = sampled(closing?.perBottle ?? 0, chances, streamOf.closing);
    this.takeSeconds = sampled(takeOff?.perBottle ?? 0, chances, streamOf['take-off']);
    this.opening = (fill?.travelIn ?? 0) + (fill?.lift ?? 0) + (fill?.lag ?? 0);
    this.lowering = (fill?.drip ?? 0) + (fill?.lower ?? 0);
  }

  begin(): void {
    this.gathered = 0;
    this.ahead = 0;
    this.rejected.begin();
    this.chute?.begin();
    this.supply?.begin();
  }

  /** Bottles of a row that came to the end of the way, and every set that is whole with them. */
  gather(row: number, bottles: number): void {
    const { state, layout } = this;
    if (layout.rowsAreSets) {
      state.places += layout.row;
      this.pass(row, bottles);
      return;
    }
    state.places += bottles;
    this.gathered += bottles;
    while (this.gathered >= layout.lanes) {
      this.gathered -= layout.lanes;
      this.pass(row, layout.lanes);
    }
  }

  private pass(row: number, bottles: number): void {
    const { state, layout } = this;
    const set = state.setCount;
    const { sets, rows } = this.events;
    if (set + 1 >= sets.start.length) sets.grow();
    state.setCount = set + 1;
    sets.touch(set);
    sets.row[set] = row;
    sets.bottles[set] = bottles;
    sets.rejected[set] = 0;
    let at = rows.arrived[row]!;
    if (layout.fill >= 0) at = this.fillSet(set, at, bottles);
    this.close(set, at, bottles);
  }

  /** The way of a set from the fill station, or from where it was gathered, to the end of the line. */
  close(set: number, from: number, bottles: number): void {
    const { state, layout } = this;
    let at = from;
    let left = bottles;
    if (layout.closing >= 0) {
      at = this.closeSet(set, at, bottles);
      left -= this.events.sets.rejected[set]!;
    }
    if (layout.takeOff >= 0) at = this.takeSet(set, at, left);
    if (state.isCounted(at)) state.counts.good += left;
  }

  private fillSet(set: number, arrived: number, bottles: number): number {
    const { state, layout, clocks, core } = this;
    const { sets } = this.events;
    const station = layout.fill;
    const ready = set === 0 ? 0 : sets.cleared[set - 1]!;
    const free = Math.max(arrived, ready);
    const start = this.heldStart(set, free);
    sets.start[set] = start;
    clocks.spend(station, starved, ready, free);
    clocks.spend(station, held, free, start);
    state.waiting[station]! -= layout.load >= 0 || layout.washer >= 0 ? bottles * state.left(start) : 0;
    const logged = clocks.log.count;
    const opened = clocks.work(station, start, this.opening);
    const drawn = this.drawn(set);
    const filled = clocks.work(
      station,
      opened,
      this.supply === undefined
        ? drawn
        : Math.max(0, drawn + this.supply.fill(opened, bottles, state.counts.good)),
    );
    const released = clocks.work(station, filled, this.lowering);
    const room = this.roomAfter(set, layout.closing >= 0);
    const clearStart = Math.max(room, released);
    clocks.spend(station, blocked, released, clearStart);
    const cleared = clocks.work(station, clearStart, this.line.fill!.clearOut);
    const firstStop = clocks.log.count > logged ? logged : -1;
    sets.opened[set] = opened;
    sets.filled[set] = filled;
    sets.released[set] = released;
    sets.clearStart[set] = clearStart;
    sets.cleared[set] = cleared;
    sets.fillStop[set] = firstStop;
    if (layout.core === station) {
      if (free > ready) core.waits(starved, ready, free, event.due, set);
      if (start > free) core.waits(held, free, start, event.start, set);
      core.works(station, stepOf.travelIn, start, opened, firstStop);
      core.works(station, stepOf.fill, opened, filled, firstStop);
      core.works(station, stepOf.lower, filled, released, firstStop);
      if (clearStart > released) core.waits(blocked, released, clearStart, event.clearStart, set);
      core.works(station, stepOf.clearOut, clearStart, cleared, firstStop);
    }
    return cleared;
  }

  /** When a fill that may begin does, by rules that what is behind holds it. */
  private heldStart(set: number, free: number): number {
    const { heldBy } = this.state;
    if (!heldBy.holds('fill')) return free;
    const { sets } = this.events;
    const start = heldBy.until('fill', free, set);
    sets.startRule[set] = heldBy.rule;
    sets.startRuleBy[set] = heldBy.by;
    sets.startFree[set] = free;
    return start;
  }

  /** The same of the heads. */
  private heldCaps(set: number, free: number): number {
    const { heldBy } = this.state;
    if (!heldBy.holds('closing')) return free;
    const { sets } = this.events;
    const start = heldBy.until('closing', free, set);
    sets.capRule[set] = heldBy.rule;
    sets.capRuleBy[set] = heldBy.by;
    sets.capFree[set] = free;
    return start;
  }

  /** s that chance gives to the fill of a set; drawn some sets ahead, since nothing else takes from that stream. */
  private drawn(set: number): number {
    const { filling } = this.events.sets;
    if (set >= this.ahead) {
      this.ahead = Math.min(set + drawnAtOnce, filling.length);
      this.drawFills(filling, set, this.ahead);
    }
    return filling[set]!;
  }

  /** Sets from one on whose fills are drawn; some at least. */
  drawnAhead(set: number): number {
    this.drawn(set);
    return this.ahead - set;
  }

  /** When there is room for a set before the heads, or at the take-off. */
  private roomAfter(set: number, beforeHeads: boolean): number {
    const { layout } = this;
    const { sets } = this.events;
    const back = set - (beforeHeads ? layout.setsBeforeHeads : layout.setsBeforeTakeOff);
    if (back < 0) return 0;
    if (beforeHeads) return sets.left[back]!;
    return layout.takeOff >= 0 ? sets.taken[back]! : 0;
  }

  private closeSet(set: number, from: number, bottles: number): number {
    const { state, chute, layout, clocks, core } = this;
    const { sets } = this.events;
    const closing = this.line.closing!;
    const station = layout.closing;
    const came = from + closing.transit;
    const ready = set === 0 ? 0 : sets.left[set - 1]!;
    const free = Math.max(came, ready);
    const start = this.heldCaps(set, free);
    sets.capStart[set] = start;
    clocks.spend(station, starved, ready, free);
    clocks.spend(station, held, free, start);
    if (layout.fill >= 0) state.waiting[station]! += bottles * state.left(came);
    state.waiting[station]! -= bottles * state.left(start);
    const turns = turnsOf(bottles, closing.heads);
    const logged = clocks.log.count;
    let at = start;
    if (chute === undefined && typeof closing.perBottle === 'number') {
      at = clocks.work(station, at, turns * closing.perBottle);
    } else {
      for (let turn = 0; turn < turns; turn++) {
        if (chute !== undefined) {
          const caps = Math.min(closing.heads, bottles - turn * closing.heads);
          const taken = chute.take(caps, at);
          clocks.spend(station, noCaps, at, taken);
          at = taken;
        }
        at = clocks.work(station, at, this.capSeconds());
      }
    }
    const firstStop = clocks.log.count > logged ? logged : -1;
    sets.rejected[set] = this.rejected.of(bottles);
    const room = this.roomAfter(set, false);
    const left = Math.max(room, at);
    clocks.spend(station, blocked, at, left);
    sets.capped[set] = at;
    sets.left[set] = left;
    sets.capStop[set] = firstStop;
    if (sets.rejected[set]! > 0 && state.isCounted(left)) state.counts.rejected += sets.rejected[set]!;
    if (layout.core === station) {
      if (free > ready) core.waits(starved, ready, free, event.capDue, set);
      if (start > free) core.waits(held, free, start, event.capStart, set);
      core.works(station, stepOf.cap, start, at, firstStop);
      if (left > at) core.waits(blocked, at, left, event.left, set);
    }
    return left;
  }

  private takeSet(set: number, from: number, bottles: number): number {
    const { state, layout, clocks, core } = this;
    const { sets } = this.events;
    const takeOff = this.line.takeOff!;
    const station = layout.takeOff;
    const came = from + takeOff.transit;
    const ready = set === 0 ? 0 : sets.taken[set - 1]!;
    const start = Math.max(came, ready);
    sets.takeStart[set] = start;
    clocks.spend(station, starved, ready, start);
    if (layout.fill >= 0 || layout.closing >= 0) state.waiting[station]! += bottles * state.left(came);
    state.waiting[station]! -= bottles * state.left(start);
    let seconds = 0;
    if (typeof takeOff.perBottle === 'number') seconds = bottles * takeOff.perBottle;
    else for (let i = 0; i < bottles; i++) seconds += this.takeSeconds();
    const logged = clocks.log.count;
    const taken = clocks.work(station, start, seconds);
    const firstStop = clocks.log.count > logged ? logged : -1;
    sets.taken[set] = taken;
    sets.takeStop[set] = firstStop;
    if (layout.core === station) {
      if (start > ready) core.waits(starved, ready, start, event.takeStart, set);
      core.works(station, stepOf.takeOff, start, taken, firstStop);
    }
    return taken;
  }
}
