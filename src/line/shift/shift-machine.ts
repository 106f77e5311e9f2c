import { type Chances, chancesOf } from './chances.ts';
import { ChuteKnots } from './chute-knots.ts';
import { ChuteLevel } from './chute-level.ts';
import { ContactSums } from './contact-sums.ts';
import { CoreTime, event } from './core-time.ts';
import { sampled, struckBottles } from './sampled.ts';
import {
  grow,
  noRoom,
  notSetUp,
  own,
  RowEvents,
  ruled,
  SetEvents,
  type ShiftEvents,
  supplied,
} from './shift-events.ts';
import {
  blocked,
  held,
  layOut,
  caps as noCaps,
  type ShiftLayout,
  starved,
  stepOf,
  turnsOf,
} from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import { StationClocks } from './station-clocks.ts';
import { SupplyLevel } from './supply-level.ts';

const streams = ['load', 'missing', 'fallen', 'fill', 'closing', 'rejected', 'take-off'] as const;
const streamOf = Object.fromEntries(streams.map((name, i) => [name, i])) as Record<
  (typeof streams)[number],
  number
>;

/** Bottles of one shift, and between its counted moments. */
interface Counts {
  put: number;
  fallen: number;
  rejected: number;
  good: number;
}

/**
 * A line that is run for one shift after another, in memory that is laid out once.
 *
 * Method   each row of the washer and each set of the lanes at the earliest moment that all it waits for allows: the
 *          station before, its own station, room behind it, hold rules, caps, and stops, which stretch the work they
 *          strike. Nothing waits for something that comes later in the flow than itself but for room and rules, and these
 *          look back, so one pass along the line is exact and no calendar of events is wanted
 * Assumes  a set leaves a station whole; bottles of a row that equals the lanes keep their places, gaps with them; a
 *          bottle without room stays in its station
 * Cost     O(rows), and O(bottles) where heads draw a time for each or take caps from a chute
 * Source   acceptance reference F2, recursion; stops that count working time, F9
 *
 * One class of more than the usual length: the pass along the line is one thought, and its parts share what they moved.
 */
export class ShiftMachine {
  readonly line: ShiftLine;
  readonly layout: ShiftLayout;
  readonly events: ShiftEvents = { rows: new RowEvents(), sets: new SetEvents() };
  readonly clocks: StationClocks;
  readonly core: CoreTime;
  readonly contacts: ContactSums | undefined;
  readonly counts: Counts = { put: 0, fallen: 0, rejected: 0, good: 0 };
  /** Bottles times seconds that stood before a station. */
  readonly waiting: Float64Array;
  /** Rows and sets of the last shift. */
  rowCount = 0;
  setCount = 0;
  /** Rows that were loaded, those that no stroke took in time among them. */
  loadedRows = 0;
  private readonly chances: Chances;
  private readonly chute: ChuteLevel | undefined;
  private readonly supply: SupplyLevel | undefined;
  private readonly missing: ReturnType<typeof struckBottles>;
  private readonly fallen: ReturnType<typeof struckBottles>;
  private readonly rejected: ReturnType<typeof struckBottles>;
  private readonly loadSeconds: () => number;
  private readonly fillSeconds: () => number;
  private readonly capSeconds: () => number;
  private readonly takeSeconds: () => number;
  private readonly conveyorSeconds: readonly number[];
  private readonly opening: number;
  private readonly lowering: number;
  private readonly index: number;
  private readonly from: number;
  private readonly to: number;
  /** Places discharged so far, and bottles that stand before the fill station. */
  private places = 0;
  private gathered = 0;

  constructor(line: ShiftLine) {
    this.line = line;
    this.layout = layOut(line);
    const { layout } = this;
    this.chances = chancesOf([...streams, ...layout.causes.map(({ cause }) => `stop ${cause}`)]);
    this.clocks = new StationClocks(layout, this.chances, streams.length);
    this.conveyorSeconds = line.conveyors.map(({ seconds }) => seconds);
    this.core = new CoreTime(layout, this.clocks, this.events, {
      conveyors: this.conveyorSeconds,
      toHeads: line.closing?.transit ?? 0,
      toTakeOff: line.takeOff?.transit ?? 0,
    });
    this.contacts = line.washer === undefined ? undefined : new ContactSums(line.washer);
    this.waiting = new Float64Array(layout.tags.length);
    const chute = line.closing?.chute;
    this.chute =
      chute === undefined
        ? undefined
        : new ChuteLevel(chute, this.clocks, {
            sorter: layout.sorter,
            heads: layout.closing,
            slow: layout.causes.length,
          });
    this.supply = line.fill?.supply === undefined ? undefined : new SupplyLevel(line.fill.supply);
    const struck = (chance: number | undefined, stream: number) =>
      struckBottles(chance ?? 0, this.chances, stream);
    this.missing = struck(line.load?.missing, streamOf.missing);
    this.fallen = struck(line.discharge?.fallen, streamOf.fallen);
    this.rejected = struck(line.closing?.rejected, streamOf.rejected);
    this.loadSeconds = sampled(line.load?.seconds ?? 0, this.chances, streamOf.load);
    this.fillSeconds = sampled(line.fill?.filling ?? 0, this.chances, streamOf.fill);
    this.capSeconds = sampled(line.closing?.perBottle ?? 0, this.chances, streamOf.closing);
    this.takeSeconds = sampled(line.takeOff?.perBottle ?? 0, this.chances, streamOf['take-off']);
    this.opening = (line.fill?.travelIn ?? 0) + (line.fill?.lift ?? 0) + (line.fill?.lag ?? 0);
    this.lowering = (line.fill?.drip ?? 0) + (line.fill?.lower ?? 0);
    this.index = (line.washer?.stroke ?? 0) + (line.washer?.dwell ?? 0);
    this.from = line.warmUp;
    this.to = line.warmUp + line.duration;
  }

  /** Most that was drawn from the tank and not made up in the last shift, m3. */
  get drawnMost(): number {
    return this.supply?.most ?? 0;
  }

  /** From the next shift on the level of the chute is written down at every corner; absent, there is none. */
  traceChute(): ChuteKnots | undefined {
    if (this.chute === undefined) return undefined;
    this.chute.knots = new ChuteKnots();
    return this.chute.knots;
  }

  /** One shift; what it gave stands in `counts`, `clocks`, `core` and `contacts`, its events in `events`. */
  run(seed: number, shift: number): void {
    const { layout, to } = this;
    this.begin(seed, shift);
    for (let row = 0; !this.isOver(row); row++) {
      if (row + 1 >= this.events.rows.stroke.length) grow(this.events.rows);
      this.loadRow(row);
      this.strokeRow(row);
      this.arrive(row);
      this.rowCount = row + 1;
    }
    this.loadedRows = this.rowCount;
    if (layout.load >= 0) {
      // the load goes on as long as it has room, whatever comes of it later
      for (let row = this.rowCount; this.events.rows.loaded[row - 1]! < to; row++) {
        if (row + 1 >= this.events.rows.stroke.length) grow(this.events.rows);
        this.loadRow(row);
        this.events.rows.stroke[row] = Number.POSITIVE_INFINITY;
        this.loadedRows = row + 1;
      }
    }
    this.chute?.end(to);
    this.clocks.countClockStops();
  }

  private begin(seed: number, shift: number): void {
    const { counts, from, to } = this;
    this.chances.begin(seed, shift);
    this.clocks.begin(from, to);
    this.core.begin(from, to);
    this.missing.begin();
    this.fallen.begin();
    this.rejected.begin();
    this.chute?.begin();
    this.supply?.begin();
    this.waiting.fill(0);
    counts.put = 0;
    counts.fallen = 0;
    counts.rejected = 0;
    counts.good = 0;
    this.places = 0;
    this.gathered = 0;
    this.rowCount = 0;
    this.setCount = 0;
  }

  /** Whether all that begins from here on begins after the shift. */
  private isOver(row: number): boolean {
    const { layout, to } = this;
    const { rows, sets } = this.events;
    if (layout.washer >= 0 && !(row > 0 && rows.ready[row - 1]! >= to)) return false;
    if (layout.washer < 0 && layout.load >= 0 && !(row > 0 && rows.stroke[row - 1]! >= to)) return false;
    const set = this.setCount - 1;
    if (layout.fill < 0 && layout.closing < 0 && layout.takeOff < 0) return true;
    if (set < 0) return false;
    if (layout.fill >= 0 && !(sets.cleared[set]! >= to)) return false;
    if (layout.closing >= 0 && !(sets.left[set]! >= to)) return false;
    return layout.takeOff < 0 || sets.taken[set]! >= to;
  }

  private isCounted(at: number): boolean {
    // what happens at the first moment of all belongs to the shift
    return (at > this.from || this.from === 0) && at <= this.to;
  }

  /** Seconds of the shift that are left after a moment. */
  private left(at: number): number {
    return at >= this.to ? 0 : this.to - Math.max(at, this.from);
  }

  private loadRow(row: number): void {
    const { layout, clocks, line } = this;
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
    rows.whyLoad[row] = room > ready ? noRoom : own;
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
    if (this.isCounted(loaded)) this.counts.put += put;
  }

  private strokeRow(row: number): void {
    const { layout, clocks, core, line } = this;
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
    const formed = this.setCount;
    if (formed > 0) {
      for (const hold of line.holds) {
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
    rows.stroke[row] = start;
    rows.whyStroke[row] = why;
    rows.strokeFor[row] = waitFor;
    const waits = why === supplied ? starved : why === ruled ? held : blocked;
    if (layout.load >= 0) {
      this.waiting[washer === undefined ? this.next() : layout.washer]! +=
        rows.put[row]! * (this.left(rows.loaded[row]!) - this.left(start));
    } else if (this.isCounted(start)) this.counts.put += rows.put[row]!;
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
    if (row > 0) {
      const stand = start - rows.stroked[row - 1]!;
      this.contacts?.stood(row, stand, rows.put, this.isCounted(start));
    }
    if (layout.core === layout.washer) {
      if (start > ready) core.waits(waits, ready, start, event.stroke, row);
      core.works(layout.washer, stepOf.stroke, start, stroked, firstStop);
      core.works(layout.washer, stepOf.dwell, stroked, again, firstStop);
    }
  }

  /** Set that must have gone on before so many bottles more have room; -1 where there is room. */
  private setForRoom(bottles: number): number {
    const { layout } = this;
    let set: number;
    if (layout.fill >= 0) {
      if (layout.wayRoom === Number.POSITIVE_INFINITY) return -1;
      const wanted = this.places + (layout.rowsAreSets ? layout.row : bottles) - layout.wayRoom;
      set = Math.ceil(wanted / layout.lanes) - 1;
    } else {
      const sets = layout.closing >= 0 ? layout.setsBeforeHeads : layout.setsBeforeTakeOff;
      if (sets === Number.POSITIVE_INFINITY) return -1;
      set = this.setCount - sets;
    }
    // `checkShift` refuses lines that come here
    if (set >= this.setCount) throw new Error('the way has no room for a row, and no set to make room');
    return set;
  }

  private next(): number {
    const { fill, closing, takeOff } = this.layout;
    return fill >= 0 ? fill : closing >= 0 ? closing : takeOff;
  }

  private arrive(row: number): void {
    const { layout, clocks, line } = this;
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
      if (rows.fallen[row]! > 0 && this.isCounted(at)) this.counts.fallen += rows.fallen[row]!;
    }
    rows.discharged[row] = at;
    for (let i = 0; i < layout.conveyors.length; i++) {
      at = clocks.ride(layout.conveyors[i]!, at, this.conveyorSeconds[i]!);
    }
    rows.arrived[row] = at;
    if (out === 0) return;
    if (layout.load >= 0 || layout.washer >= 0) {
      const next = this.next();
      if (next >= 0) this.waiting[next]! += out * this.left(at);
      else if (this.isCounted(at)) this.counts.good += out;
    }
    if (layout.rowsAreSets) {
      this.places += layout.row;
      this.passSet(row, out);
      return;
    }
    this.places += out;
    this.gathered += out;
    while (this.gathered >= layout.lanes) {
      this.gathered -= layout.lanes;
      this.passSet(row, layout.lanes);
    }
  }

  /** A set from where it is gathered to the end of the line. */
  private passSet(row: number, bottles: number): void {
    const set = this.setCount;
    if (set + 1 >= this.events.sets.start.length) grow(this.events.sets);
    const { sets, rows } = this.events;
    this.setCount = set + 1;
    sets.row[set] = row;
    sets.bottles[set] = bottles;
    sets.rejected[set] = 0;
    let at = rows.arrived[row]!;
    if (this.layout.fill >= 0) at = this.fillSet(set, at, bottles);
    let left = bottles;
    if (this.layout.closing >= 0) {
      at = this.closeSet(set, at, bottles);
      left -= sets.rejected[set]!;
    }
    if (this.layout.takeOff >= 0) at = this.takeSet(set, at, left);
    if (this.next() >= 0 && this.isCounted(at)) this.counts.good += left;
  }

  private fillSet(set: number, arrived: number, bottles: number): number {
    const { layout, clocks, core } = this;
    const { sets } = this.events;
    const station = layout.fill;
    const ready = set === 0 ? 0 : sets.cleared[set - 1]!;
    const start = Math.max(arrived, ready);
    sets.whyStart[set] = arrived > ready ? supplied : own;
    sets.start[set] = start;
    clocks.spend(station, starved, ready, start);
    this.waiting[station]! -= layout.load >= 0 || layout.washer >= 0 ? bottles * this.left(start) : 0;
    const logged = clocks.log.count;
    const opened = clocks.work(station, start, this.opening);
    const drawn = this.fillSeconds();
    const filled = clocks.work(
      station,
      opened,
      this.supply === undefined ? drawn : Math.max(0, drawn + this.supply.fill(opened, bottles)),
    );
    const released = clocks.work(station, filled, this.lowering);
    const room = this.roomAfter(set, layout.closing >= 0);
    const clearStart = Math.max(room, released);
    sets.whyClear[set] = room > released ? noRoom : own;
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
      if (start > ready) core.waits(starved, ready, start, event.start, set);
      core.works(station, stepOf.travelIn, start, opened, firstStop);
      core.works(station, stepOf.fill, opened, filled, firstStop);
      core.works(station, stepOf.lower, filled, released, firstStop);
      if (clearStart > released) core.waits(blocked, released, clearStart, event.clearStart, set);
      core.works(station, stepOf.clearOut, clearStart, cleared, firstStop);
    }
    return cleared;
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
    const { layout, clocks, core, chute } = this;
    const { sets } = this.events;
    const closing = this.line.closing!;
    const station = layout.closing;
    const came = from + closing.transit;
    const ready = set === 0 ? 0 : sets.left[set - 1]!;
    const start = Math.max(came, ready);
    sets.whyCap[set] = came > ready ? supplied : own;
    sets.capStart[set] = start;
    clocks.spend(station, starved, ready, start);
    if (layout.fill >= 0) this.waiting[station]! += bottles * this.left(came);
    this.waiting[station]! -= bottles * this.left(start);
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
    sets.whyLeft[set] = room > at ? noRoom : own;
    clocks.spend(station, blocked, at, left);
    sets.capped[set] = at;
    sets.left[set] = left;
    sets.capStop[set] = firstStop;
    if (sets.rejected[set]! > 0 && this.isCounted(left)) this.counts.rejected += sets.rejected[set]!;
    if (layout.core === station) {
      if (start > ready) core.waits(starved, ready, start, event.capStart, set);
      core.works(station, stepOf.cap, start, at, firstStop);
      if (left > at) core.waits(blocked, at, left, event.left, set);
    }
    return left;
  }

  private takeSet(set: number, from: number, bottles: number): number {
    const { layout, clocks, core } = this;
    const { sets } = this.events;
    const takeOff = this.line.takeOff!;
    const station = layout.takeOff;
    const came = from + takeOff.transit;
    const ready = set === 0 ? 0 : sets.taken[set - 1]!;
    const start = Math.max(came, ready);
    sets.whyTake[set] = came > ready ? supplied : own;
    sets.takeStart[set] = start;
    clocks.spend(station, starved, ready, start);
    if (layout.fill >= 0 || layout.closing >= 0) this.waiting[station]! += bottles * this.left(came);
    this.waiting[station]! -= bottles * this.left(start);
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
