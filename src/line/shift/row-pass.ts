import { ContactSums } from './contact-sums.ts';
import { event } from './core-time.ts';
import { isPlain } from './held-by.ts';
import { type StruckBottles, sampled, struckBottles } from './sampled.ts';
import { noRoom, noRule, notSetUp, own, ruled, standing, supplied } from './shift-events.ts';
import { blocked, held, starved, stepOf } from './shift-layout.ts';
import { type ShiftState, streamOf } from './shift-state.ts';

/**
 * Rows of the washer from the load to the end of the way.
 *
 * Method   each stroke at the earliest moment that the load, the washer itself, hold rules and room on the way allow; what
 *          comes later in the flow has been passed as far as it is asked for
 * Assumes  bottles of a row that equals the lanes keep their places, gaps with them
 * Cost     O(1) a row
 * Source   acceptance reference F2, recursion
 */
export class RowPass {
  readonly contacts: ContactSums | undefined;
  private readonly state: ShiftState;
  // looked at in every row: at hand rather than a step away
  private readonly line: ShiftState['line'];
  private readonly layout: ShiftState['layout'];
  private readonly clocks: ShiftState['clocks'];
  private readonly core: ShiftState['core'];
  private readonly events: ShiftState['events'];
  readonly missing: StruckBottles;
  readonly fallen: StruckBottles;
  private readonly loadSeconds: () => number;
  readonly index: number;
  private readonly plainHolds: ShiftState['line']['holds'];

  constructor(state: ShiftState) {
    const { line, layout, clocks, chances } = state;
    this.state = state;
    this.line = line;
    this.layout = layout;
    this.clocks = clocks;
    this.core = state.core;
    this.events = state.events;
    this.contacts = line.washer === undefined ? undefined : new ContactSums(line.washer);
    this.missing = struckBottles(line.load?.missing ?? 0, chances, streamOf.missing);
    this.fallen = struckBottles(line.discharge?.fallen ?? 0, chances, streamOf.fallen);
    this.loadSeconds = sampled(line.load?.seconds ?? 0, chances, streamOf.load);
    this.plainHolds = line.holds.filter(isPlain);
    this.index = (line.washer?.stroke ?? 0) + (line.washer?.dwell ?? 0);
  }

  begin(): void {
    this.missing.begin();
    this.fallen.begin();
  }

  load(row: number): void {
    const { state, layout, clocks, line } = this;
    const { rows } = this.events;
    const put = layout.row - this.missing.of(layout.row);
    rows.put[row] = put;
    const { load } = line;
    if (load === undefined) {
      rows.loaded[row] = 0;
      return;
    }
    const ready = row === 0 ? 0 : rows.loaded[row - 1]!;
    const back = row - layout.rowsLoaded;
    const room = back >= 0 ? rows.stroke[back]! : 0;
    const start = Math.max(room, ready);
    rows.loadStart[row] = start;
    clocks.spend(layout.load, blocked, ready, start);
    let seconds = 0;
    if (load.per === 'row') seconds = this.loadSeconds();
    else if (typeof load.seconds === 'number') seconds = put * load.seconds;
    else for (let i = 0; i < put; i++) seconds += this.loadSeconds();
    const logged = clocks.log.count;
    const loaded = clocks.work(layout.load, start, seconds);
    rows.loadStop[row] = clocks.log.count > logged ? logged : -1;
    rows.loaded[row] = loaded;
    if (state.isCounted(loaded)) state.counts.put += put;
  }

  stroke(row: number): void {
    const { state, layout, clocks, core, line } = this;
    const { rows, sets } = this.events;
    const { washer } = line;
    const ready = washer === undefined || row === 0 ? 0 : rows.ready[row - 1]!;
    const behind = washer?.rows ?? 0;
    const before = row - behind;
    const full = before >= 0 ? rows.put[before]! : line.start === 'washer full' ? layout.row : 0;
    const fallen = full === 0 ? 0 : this.fallen.of(full);
    const out = full - fallen;
    rows.fallen[row] = fallen;
    rows.out[row] = out;

    let start = ready;
    let why = own;
    let waitFor = -1;
    if (rows.loaded[row]! > start) {
      start = rows.loaded[row]!;
      why = supplied;
    }
    const formed = state.setCount;
    if (formed > 0) {
      for (const hold of this.plainHolds) {
        const until = hold.until === 'release' ? sets.released[formed - 1]! : sets.filled[formed - 1]!;
        if (until > start) {
          start = until;
          why = ruled;
          waitFor = formed - 1;
        }
      }
    }
    if (out > 0) {
      const set = this.setForRoom(out);
      if (set >= 0) {
        const free =
          layout.fill >= 0
            ? sets.start[set]!
            : layout.closing >= 0
              ? sets.left[set]!
              : layout.takeOff >= 0
                ? sets.taken[set]!
                : 0;
        if (free > start) {
          start = free;
          why = noRoom;
          waitFor = set;
        }
      }
    }
    // what stops the discharge keeps the next row in the washer
    if (row > 0 && rows.dischargeStop[row - 1]! >= 0 && rows.discharged[row - 1]! > start) {
      start = rows.discharged[row - 1]!;
      why = notSetUp;
    }
    if (state.belts !== undefined) {
      const runs = state.belts.free(row, start);
      if (runs > start) {
        start = runs;
        why = standing;
        waitFor = state.belts.met;
      }
    }
    rows.whyStroke[row] = why;
    rows.strokeFor[row] = waitFor;
    if (state.heldBy.holds('washer')) start = this.heldStroke(row, start);
    rows.stroke[row] = start;
    why = rows.whyStroke[row]!;
    const isHeld = why === ruled || rows.strokeRule[row] !== noRule;
    const waits = isHeld ? held : why === supplied ? starved : blocked;
    if (layout.load >= 0) {
      state.waiting[washer === undefined ? state.next : layout.washer]! +=
        rows.put[row]! * (state.left(rows.loaded[row]!) - state.left(start));
    } else if (state.isCounted(start)) state.counts.put += rows.put[row]!;
    if (washer === undefined) {
      rows.stroked[row] = start;
      rows.ready[row] = start;
      rows.washStop[row] = -1;
      return;
    }
    clocks.spend(layout.washer, waits, ready, start);
    const logged = clocks.log.count;
    const stroked = clocks.work(layout.washer, start, washer.stroke);
    const again = clocks.work(layout.washer, stroked, washer.dwell);
    const firstStop = clocks.log.count > logged ? logged : -1;
    rows.washStop[row] = firstStop;
    rows.stroked[row] = stroked;
    rows.ready[row] = again;
    if (row > 0) this.contacts?.stood(row, row + 1, rows, state.isCounted(start));
    if (layout.core === layout.washer) {
      if (start > ready) core.waits(waits, ready, start, event.stroke, row);
      core.works(layout.washer, stepOf.stroke, start, stroked, firstStop);
      core.works(layout.washer, stepOf.dwell, stroked, again, firstStop);
    }
  }

  /** When a stroke that may begin does, by rules that what is behind holds it. */
  private heldStroke(row: number, from: number): number {
    const { state } = this;
    const { rows } = this.events;
    const { heldBy, belts, setCount } = state;
    let at = from;
    rows.strokeRule[row] = noRule;
    for (;;) {
      const until = heldBy.until('washer', at, setCount);
      if (heldBy.rule >= 0) {
        rows.strokeRule[row] = heldBy.rule;
        rows.strokeRuleBy[row] = heldBy.by;
        rows.strokeFree[row] = at;
      }
      const runs = belts === undefined ? until : belts.free(row, until);
      if (runs === until) return until;
      rows.strokeRule[row] = noRule;
      rows.whyStroke[row] = standing;
      rows.strokeFor[row] = belts!.met;
      at = runs;
    }
  }

  /** Set that must have gone on before so many bottles more have room; -1 where there is room. */
  private setForRoom(bottles: number): number {
    const { state, layout } = this;
    let set: number;
    if (layout.fill >= 0) {
      if (layout.wayRoom === Number.POSITIVE_INFINITY) return -1;
      const wanted = state.places + (layout.rowsAreSets ? layout.row : bottles) - layout.wayRoom;
      set = Math.ceil(wanted / layout.lanes) - 1;
    } else {
      const sets = layout.closing >= 0 ? layout.setsBeforeHeads : layout.setsBeforeTakeOff;
      if (sets === Number.POSITIVE_INFINITY) return -1;
      set = state.setCount - sets;
    }
    // `checkShift` refuses lines that come here
    if (set >= state.setCount) throw new Error('the way has no room for a row, and no set to make room');
    return set;
  }

  /** Returns  bottles that came to the end of the way */
  arrive(row: number): number {
    const { state, layout, clocks, line } = this;
    const { counts, waiting, next, belts, conveyorSeconds } = state;
    const { rows } = this.events;
    const out = rows.out[row]!;
    const stroked = rows.stroked[row]!;
    let at = stroked;
    rows.dischargeStop[row] = -1;
    if (line.discharge !== undefined && out + rows.fallen[row]! > 0) {
      const logged = clocks.log.count;
      // it is at its work for as long as rows come, not only while one is set up
      clocks.ages(layout.discharge, this.index - line.discharge.seconds);
      at = clocks.work(layout.discharge, stroked, line.discharge.seconds);
      if (clocks.log.count > logged) rows.dischargeStop[row] = logged;
      if (rows.fallen[row]! > 0 && state.isCounted(at)) counts.fallen += rows.fallen[row]!;
    }
    rows.discharged[row] = at;
    if (belts !== undefined && out > 0) at = belts.carry(row, at, out);
    else {
      rows.onto[row] = at;
      for (let i = 0; i < layout.conveyors.length; i++) {
        at = clocks.ride(layout.conveyors[i]!, at, conveyorSeconds[i]!);
      }
    }
    rows.arrived[row] = at;
    if (out > 0 && (layout.load >= 0 || layout.washer >= 0)) {
      if (next >= 0) waiting[next]! += out * state.left(at);
      else if (state.isCounted(at)) counts.good += out;
    }
    return out;
  }
}
