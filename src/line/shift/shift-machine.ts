import { CalmPass } from './calm-pass.ts';
import { ChuteKnots } from './chute-knots.ts';
import type { ContactSums } from './contact-sums.ts';
import type { CoreTime } from './core-time.ts';
import { RowPass } from './row-pass.ts';
import { SetPass } from './set-pass.ts';
import type { ShiftEvents } from './shift-events.ts';
import type { ShiftLayout } from './shift-layout.ts';
import type { ShiftLine } from './shift-line.ts';
import { ShiftState } from './shift-state.ts';
import type { StationClocks } from './station-clocks.ts';
import type { SetSupply } from './supply-level.ts';

/**
 * A line that is run for one shift after another, in memory that is laid out once.
 *
 * Method   each row of the washer and each set of the lanes at the earliest moment that all it waits for allows: the
 *          station before, its own station, room behind it, hold rules, caps, and stops, which stretch the work they
 *          strike. Nothing waits for something that comes later in the flow than itself but for room and rules, and these
 *          look back, so one pass along the line is exact and no calendar of events is wanted. Rows to which nothing
 *          happens are passed many at once
 * Assumes  `RowPass`, `SetPass`
 * Cost     O(rows), and O(bottles) where heads draw a time for each or take caps from a chute
 * Source   acceptance reference F2, recursion; stops that count working time, F9
 */
export class ShiftMachine {
  readonly line: ShiftLine;
  readonly layout: ShiftLayout;
  readonly clocks: StationClocks;
  readonly core: CoreTime;
  readonly contacts: ContactSums | undefined;
  readonly counts: ShiftState['counts'];
  readonly waiting: Float64Array;
  /** Rows of the last shift that a stroke took. */
  rowCount = 0;
  private readonly state: ShiftState;
  private readonly rows: RowPass;
  private readonly sets: SetPass;
  private readonly calm: CalmPass | undefined;
  private readonly to: number;

  /**
   * Symbols  rowByRow  no rows at once, for who wants to see that they come to the same
   *          supply    what fills draw on, in the place of the line's own; asked row by row
   */
  constructor(
    line: ShiftLine,
    { rowByRow = false, supply }: { readonly rowByRow?: boolean; readonly supply?: SetSupply } = {},
  ) {
    this.line = line;
    this.state = new ShiftState(line);
    this.rows = new RowPass(this.state);
    this.sets = new SetPass(this.state, supply);
    this.calm = rowByRow || supply !== undefined ? undefined : CalmPass.of(this.state, this.rows, this.sets);
    this.layout = this.state.layout;
    this.clocks = this.state.clocks;
    this.core = this.state.core;
    this.counts = this.state.counts;
    this.waiting = this.state.waiting;
    this.contacts = this.rows.contacts;
    this.to = line.warmUp + line.duration;
  }

  /** Of the last shift, written down to the last of them. */
  get events(): ShiftEvents {
    const { events } = this.state;
    events.late.writeFrom(0);
    return events;
  }

  /** Sets of the last shift, and rows that were loaded. */
  get setCount(): number {
    return this.state.setCount;
  }

  get loadedRows(): number {
    return this.state.loadedRows;
  }

  /** Most that was drawn from the tank and not made up in the last shift, m3. */
  get drawnMost(): number {
    return this.sets.supply?.most ?? 0;
  }

  /** When the tank of the last shift first could not give a fill, s counted, and the good bottles that were filled before. */
  get ranDry(): { readonly at: number; readonly bottles: number } | undefined {
    const { supply } = this.sets;
    if (supply === undefined || !(supply.dryAt < this.to)) return undefined;
    return { at: Math.max(0, supply.dryAt - this.line.warmUp), bottles: supply.dryBottles };
  }

  /** From the next shift on the level of the chute is written down at every corner; absent, there is none. */
  traceChute(): ChuteKnots | undefined {
    const { chute } = this.sets;
    if (chute === undefined) return undefined;
    chute.knots = new ChuteKnots();
    return chute.knots;
  }

  /** One shift; what it gave stands in `counts`, `clocks`, `core` and `contacts`, its events in `events`. */
  run(seed: number, shift: number): void {
    const { state, rows, sets, layout, calm, to } = this;
    const events = state.events.rows;
    state.begin(seed, shift);
    rows.begin();
    sets.begin();
    this.rowCount = 0;
    for (let row = 0; !this.isOver(row); row++) {
      if (calm !== undefined) {
        row = calm.pass(row);
        this.rowCount = row;
        if (this.isOver(row)) break;
      }
      if (row + 1 >= events.stroke.length) events.grow();
      events.touch(row);
      rows.load(row);
      rows.stroke(row);
      const out = rows.arrive(row);
      if (out > 0 && state.next >= 0) {
        sets.gather(row, out);
        state.belts?.passed(row);
      }
      this.rowCount = row + 1;
    }
    state.loadedRows = this.rowCount;
    if (layout.load >= 0) {
      // the load goes on as long as it has room, whatever comes of it later
      for (let row = this.rowCount; events.loaded[row - 1]! < to; row++) {
        if (row + 1 >= events.stroke.length) events.grow();
        events.touch(row);
        rows.load(row);
        events.stroke[row] = Number.POSITIVE_INFINITY;
        state.loadedRows = row + 1;
      }
    }
    sets.chute?.end(to);
    state.clocks.countClockStops();
  }

  /** Whether all that begins from here on begins after the shift. */
  private isOver(row: number): boolean {
    const { layout, to, setCount } = this;
    const { rows, sets } = this.state.events;
    if (layout.washer >= 0 && !(row > 0 && rows.ready[row - 1]! >= to)) return false;
    if (layout.washer < 0 && layout.load >= 0 && !(row > 0 && rows.stroke[row - 1]! >= to)) return false;
    const set = setCount - 1;
    if (this.state.next < 0) return true;
    if (set < 0) return false;
    if (layout.fill >= 0 && !(sets.cleared[set]! >= to)) return false;
    if (layout.closing >= 0 && !(sets.left[set]! >= to)) return false;
    return layout.takeOff < 0 || sets.taken[set]! >= to;
  }
}
