import { CalmBooks } from './calm-books.ts';
import { type CalmLine, calmLine } from './calm-line.ts';
import { CalmMoments } from './calm-moments.ts';
import { CalmWalk } from './calm-walk.ts';
import type { RowPass } from './row-pass.ts';
import type { SetPass } from './set-pass.ts';
import type { ShiftState } from './shift-state.ts';
import { SupplyLevel } from './supply-level.ts';

interface Passes {
  readonly rows: RowPass;
  readonly sets: SetPass;
  readonly supply: SupplyLevel | undefined;
}

/** s; what sums of so many seconds may be off by */
const rounding = 1e-6;

/**
 * Rows to which nothing happens on their way to the heads: no stop strikes, and nothing is missing, falls or is rejected.
 *
 * Method   as many rows as nothing can strike are gone through at once (`CalmWalk`), and what they had is entered into the
 *          accounts (`CalmBooks`). Heads and take-off that are stopped, or that lack caps, do their part of a set as
 *          `SetPass` has it, and the walk goes on behind it
 * Assumes  a line with washer, fill station, heads and take-off whose rows are sets, of whose times the fill alone varies,
 *          and whose minutes are counted at the washer; belts without a piece that accumulates beside them. Other lines
 *          are passed row by row
 * Cost     O(1) a row
 * Source   acceptance reference F2, recursion
 */
export class CalmPass {
  private readonly state: ShiftState;
  private readonly rows: RowPass;
  private readonly sets: SetPass;
  private readonly supply: SupplyLevel | undefined;
  private readonly line: CalmLine;
  private readonly walk: CalmWalk;
  private readonly books: CalmBooks;
  private readonly moments: CalmMoments;

  private constructor(state: ShiftState, { rows, sets, supply }: Passes, line: CalmLine) {
    this.state = state;
    this.rows = rows;
    this.sets = sets;
    this.supply = supply;
    this.line = line;
    this.walk = new CalmWalk(state, line, supply);
    this.books = new CalmBooks(state, line, this.walk);
    this.moments = new CalmMoments(state, line);
    state.events.late.write = (first, end, set, part) =>
      part ? this.moments.writePart(first, end, set) : this.moments.write(first, end, set);
  }

  /** Absent where the line is of another kind. */
  static of(state: ShiftState, rows: RowPass, sets: SetPass): CalmPass | undefined {
    const { belts } = state;
    const { supply } = sets;
    const line = calmLine(state);
    if (line === undefined || (belts !== undefined && !belts.areAll)) return undefined;
    // what is handed in may not be taken back
    if (supply !== undefined && !(supply instanceof SupplyLevel)) return undefined;
    return new CalmPass(state, { rows, sets, supply }, line);
  }

  /** Passes rows from one on as long as nothing happens to them; returns the first to which something may. */
  pass(first: number): number {
    const { walk } = this;
    let row = first;
    while (this.isCalm(row)) {
      this.go(row);
      if (walk.met === row) break;
      this.enter(row);
      this.count(row);
      row = walk.met;
    }
    return row;
  }

  /** Whether a row goes in behind one that is past all that struck it. */
  private isCalm(row: number): boolean {
    const { layout, belts, events, setCount, from } = this.state;
    const { rows, sets } = events;
    if (row === 0 || setCount === 0 || rows.dischargeStop[row - 1]! >= 0) return false;
    if (belts !== undefined && !belts.runFrom(rows.ready[row - 1]!)) return false;
    if (from === 0) return true;
    // what a shift counts from its warm-up on is parted at that moment by the parts themselves
    const set = setCount - 1;
    return (
      (layout.load < 0 || rows.loaded[row - 1]! > from) &&
      rows.ready[row - 1]! > from &&
      sets.cleared[set]! > from &&
      sets.left[set]! > from &&
      sets.taken[set]! > from
    );
  }

  private go(first: number): void {
    const { walk, supply } = this;
    const end = this.end(first);
    supply?.mark();
    walk.go(first, end, this.tail(first));
    const enough = this.capped(first);
    if (enough === walk.whole && (supply === undefined || walk.met === end)) return;
    // as far as the caps last; and what a tank gave to a row that was not passed is given back
    supply?.back();
    walk.go(first, Math.min(walk.met, enough + 1), enough);
  }

  /**
   * Enters a walk into the accounts, with the moments that they ask for, seldom far from its beginning, and those that the
   * next row looks back on.
   */
  private enter(first: number): void {
    const { moments, walk, books } = this;
    const { events, setCount } = this.state;
    const { met, waits, waitCount } = walk;
    const asked = waitCount > 0 ? waits[waitCount - 1]! : first;
    const last = met - 1;
    moments.write(first, asked + 1, setCount);
    if (asked < last) moments.writePart(last, met, setCount + last - first);
    books.enter(first);
    if (asked + 1 < last) events.late.add(asked + 1, last, setCount + asked + 1 - first);
  }

  /** Rows that a station takes before the next of its stops, at the least. */
  private before(station: number, seconds: number): number {
    const { nextStrike, worked } = this.state.clocks;
    if (station < 0 || !(seconds > 0)) return Number.POSITIVE_INFINITY;
    return Math.floor((nextStrike[station]! - worked[station]! - rounding) / seconds);
  }

  /** First row that something may strike before the heads, or for which there is no room yet. */
  private end(first: number): number {
    const { state, line } = this;
    const { layout, setCount } = state;
    const { rows, sets } = state.events;
    const spared = Math.min(this.rows.missing.spared(), this.rows.fallen.spared());
    const most = Math.min(
      Math.floor(spared / layout.row),
      rows.stroke.length - first - 2,
      sets.start.length - setCount - 2,
      this.sets.drawnAhead(setCount),
      this.before(layout.load, line.loading),
      this.before(layout.washer, line.stroke + line.dwell),
      this.before(layout.discharge, line.ages + line.setUp),
    );
    const { start, washer } = state.line;
    const behind = washer!.rows;
    for (let row = first; row < first + Math.min(most, behind); row++) {
      const before = row - behind;
      if (before < 0 ? start === 'empty' : rows.put[before] !== layout.row) return row;
    }
    return first + most;
  }

  /** First row that something may strike at the heads or the take-off. */
  private tail(first: number): number {
    const { line, sets } = this;
    const { layout } = this.state;
    const most = Math.min(
      Math.floor(sets.rejected.spared() / layout.row),
      this.before(layout.closing, line.spells * line.spell),
      this.before(layout.takeOff, line.takingOff),
    );
    return Math.min(first + most, Number.MAX_SAFE_INTEGER);
  }

  /** Takes the caps of the walk's rows; returns the first for which they may not suffice. */
  private capped(first: number): number {
    const { chute } = this.sets;
    const { whole } = this.walk;
    if (chute === undefined) return whole;
    const { state, line } = this;
    const { capStart } = state.events.sets;
    const { row: places } = state.layout;
    const { heads } = state.line.closing!;
    for (let row = first; row < whole; row++) {
      // enough for the whole set lie there, so nobody waits, whatever the sorter does meanwhile
      if (chute.caps < places) return row;
      let at = capStart[state.setCount + row - first]!;
      for (let taken = 0; taken < places; taken += heads) {
        chute.take(Math.min(heads, places - taken), at);
        at += line.spell;
      }
    }
    return whole;
  }

  /** Counts what the walk passed; the set that stopped before the heads goes on as others do. */
  private count(first: number): void {
    const { state, walk } = this;
    const { counts, layout, events } = state;
    const { missing, fallen, contacts } = this.rows;
    const { met, whole } = walk;
    const { row: places } = layout;
    const bottles = (met - first) * places;
    const good = (whole - first) * places;
    missing.of(bottles);
    fallen.of(bottles);
    this.sets.rejected.of(good);
    state.setCount += met - first;
    state.places += bottles;
    counts.put += bottles;
    counts.good += good;
    contacts?.stood(first, met, events.rows, true);
    if (whole === met) return;
    const set = state.setCount - 1;
    events.sets.touch(set);
    this.sets.close(set, events.sets.cleared[set]!, places);
  }
}
